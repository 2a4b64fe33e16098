// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/assembly_tab.h"

#include "cut/progress.h"
#include "desk/text.h"
#include "figures/figure_view.h"
#include "stages/cut/cut_desk.h"
#include "stages/cut/row_choice.h"
#include "stages/cut/stop_rows.h"
#include "widgets/plain_text.h"
#include "widgets/seen_refresh.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

namespace miterbook {

namespace {

/// Everything of the opening goes with a set that is hung: stool and apron too.
std::vector<std::size_t> piecesWith(
    const SawSheet& sheet, const AssemblySet& set, PieceState state) {
    return state == PieceState::hung ? piecesOf(sheet, set.source, set.unit) : set.pieces;
}

} // namespace

AssemblyTab::AssemblyTab(CutDesk& cut, QWidget* parent)
    : QWidget(parent)
    , m_cut(cut)
    , m_sets(new FigureView(tr("Sets"), setTitles()))
    , m_pace(plainLabel({})) {
    setLargeType(*m_sets);
    auto* top = new QHBoxLayout;
    top->addWidget(m_pace, 1);
    const auto add = [&](const QString& words, PieceState state) {
        auto* action = new QAction(words, this);
        connect(action, &QAction::triggered, this, [this, state] { tick(state); });
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        button->setToolButtonStyle(Qt::ToolButtonTextOnly);
        top->addWidget(button);
    };
    add(tr("Assembled"), PieceState::assembled);
    add(tr("Hung"), PieceState::hung);
    add(tr("Only cut"), PieceState::cut);
    m_pace->setAccessibleDescription(tr("Pace of the bench"));
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(m_sets, 1);
    auto* seen = new SeenRefresh(this, [this] { refresh(); });
    connect(&cut, &CutDesk::reckoned, seen, &SeenRefresh::want);
}

void AssemblyTab::tick(PieceState state) {
    const AssemblyPlan& plan = m_cut.assembly();
    std::vector<std::size_t> pieces;
    for (const std::size_t row : chosenRows(*m_sets)) {
        const AssemblySet& set = row < plan.bench.size() ? plan.bench[row]
                                                         : plan.floor[row - plan.bench.size()];
        const auto more = piecesWith(m_cut.figures().sheet, set, state);
        pieces.insert(pieces.end(), more.begin(), more.end());
    }
    m_cut.tick(pieces, state);
}

void AssemblyTab::refresh() {
    m_sets->setRows(setRows(m_cut));
    const AssemblyPlan& plan = m_cut.assembly();
    if (plan.bench.empty()) {
        m_pace->setText(tr("Nothing waits for the bench."));
        return;
    }
    const QString clamps = plan.work.clamps >= plan.clampsNeeded
        ? tr("no clamp is waited for")
        : tr("%1 clamps would never keep it waiting").arg(plan.clampsNeeded);
    m_pace->setText(
        tr("%1: the first set is off after %2 min, then %3 sets of %4 corners an hour with "
           "%5 clamps; %6.")
            .arg(text(plan.joining))
            .arg(qRound(plan.firstOff))
            .arg(plan.setsPerHour, 0, 'f', 1)
            .arg(plan.usualCorners)
            .arg(plan.work.clamps)
            .arg(clamps));
}

} // namespace miterbook
