// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/sticks_tab.h"

#include "basics/length_text.h"
#include "cut/progress.h"
#include "desk/desk.h"
#include "desk/text.h"
#include "figures/figure_view.h"
#include "job/rack_edits.h"
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

SticksTab::SticksTab(CutDesk& cut, QWidget* parent)
    : QWidget(parent)
    , m_cut(cut)
    , m_sticks(new FigureView(tr("Sticks"), stickTitles()))
    , m_cutNow(new QAction(tr("Cut"), this))
    , m_putAway(new QAction(tr("Put remainders in the rack"), this))
    , m_told(plainLabel({})) {
    setLargeType(*m_sticks);
    m_cutNow->setShortcut(QKeySequence(Qt::Key_Space));
    m_cutNow->setShortcutContext(Qt::WidgetShortcut);
    m_sticks->table()->addAction(m_cutNow);
    m_putAway->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_R));
    m_putAway->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    addAction(m_putAway);
    connect(m_cutNow, &QAction::triggered, this, &SticksTab::tick);
    connect(m_putAway, &QAction::triggered, this, &SticksTab::putAway);
    m_told->setAccessibleDescription(tr("Remainders"));
    auto* top = new QHBoxLayout;
    top->addWidget(m_told, 1);
    for (QAction* action : {m_cutNow, m_putAway}) {
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        button->setToolButtonStyle(Qt::ToolButtonTextOnly);
        top->addWidget(button);
    }
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(m_sticks, 1);
    auto* seen = new SeenRefresh(this, [this] { refresh(); });
    connect(&cut, &CutDesk::reckoned, seen, &SeenRefresh::want);
}

QString SticksTab::told() const {
    return m_told->text();
}

void SticksTab::refresh() {
    m_sticks->setRows(stickRows(m_cut));
    const Length keep = m_cut.book().prices.practice().keepOffcut;
    const auto drops = static_cast<qsizetype>(dropsOf(m_cut.figures().sheet, keep).size());
    m_putAway->setEnabled(drops > 0);
    const QString least = text(formatLengthWithUnit(keep, m_cut.book().prices.shop().lengths()));
    m_told->setText(drops == 0
            ? tr("Remainders of %1 and more go into the rack once a stick is cut.").arg(least)
            : counted(drops, tr("One remainder of %1 or more is not in the rack yet."),
                tr("%1 remainders of %2 or more are not in the rack yet."))
                  .arg(least));
}

void SticksTab::tick() {
    const SawSheet& sheet = m_cut.figures().sheet;
    std::vector<std::size_t> pieces;
    for (const std::size_t row : chosenRows(*m_sticks)) {
        for (const std::size_t at : sheet.sticks[row].pieces) {
            if (!sheet.pieces[at].isCut())
                pieces.push_back(at);
        }
    }
    m_cut.tick(pieces, PieceState::cut);
}

void SticksTab::putAway() {
    m_cut.desk().perform(
        putAwayEdit(m_cut.book(), m_cut.desk().ids(), m_cut.plan(), m_cut.figures().sheet));
}

} // namespace miterbook
