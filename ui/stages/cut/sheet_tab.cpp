// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/sheet_tab.h"

#include "cut/progress.h"
#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "stages/cut/cut_desk.h"
#include "stages/cut/row_choice.h"
#include "stages/cut/stop_rows.h"
#include "widgets/plain_text.h"
#include "widgets/seen_refresh.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QSplitter>
#include <QTableView>
#include <QToolButton>
#include <QVBoxLayout>

namespace miterbook {

SheetTab::SheetTab(CutDesk& cut, QWidget* parent)
    : QWidget(parent)
    , m_cut(cut)
    , m_stops(new FigureView(tr("Stops"), stopTitles()))
    , m_pieces(new FigureView(tr("Pieces at the stop"), stopPieceTitles()))
    , m_typed(new QLineEdit)
    , m_done(plainLabel({}))
    , m_problems(plainLabel({})) {
    setLargeType(*m_stops);
    QAction* cutNow = action(tr("Cut"), PieceState::cut);
    cutNow->setShortcut(QKeySequence(Qt::Key_Space));
    QAction* back = action(tr("Not cut"), PieceState::listed);
    QAction* spoiled = action(tr("Spoiled: cut another"), PieceState::spoiled);
    m_typed->setPlaceholderText(
        tr("Stop number, stick 7 or mark, then Enter: cut. W4 assembled, W4 hung"));
    m_typed->setAccessibleName(tr("Number or mark from the paper"));
    m_typed->setClearButtonEnabled(true);
    connect(m_typed, &QLineEdit::returnPressed, this, &SheetTab::tickTyped);
    auto* top = new QHBoxLayout;
    top->addWidget(m_typed, 1);
    for (QAction* each : {cutNow, back, spoiled}) {
        auto* button = new QToolButton;
        button->setDefaultAction(each);
        button->setToolButtonStyle(Qt::ToolButtonTextOnly);
        top->addWidget(button);
    }
    top->addWidget(m_done);
    m_pieces->standBelow();
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(m_stops);
    split->addWidget(m_pieces);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(split, 1);
    layout->addWidget(m_problems);
    m_problems->setAccessibleName(tr("What to look at"));
    connect(m_stops->table()->selectionModel(), &QItemSelectionModel::currentChanged, this,
        [this] { showPieces(); });
    auto* seen = new SeenRefresh(this, [this] { refresh(); });
    connect(&cut, &CutDesk::reckoned, seen, &SeenRefresh::want);
}

QAction* SheetTab::action(const QString& words, PieceState state) {
    auto* action = new QAction(words, this);
    action->setShortcutContext(Qt::WidgetShortcut);
    connect(action, &QAction::triggered, this, [this, state] { tick(state); });
    m_stops->table()->addAction(action);
    m_pieces->table()->addAction(action);
    return action;
}

void SheetTab::refresh() {
    m_stops->setRows(stopRows(m_cut));
    showPieces();
    const std::vector<std::string>& problems = m_cut.figures().sheet.problems;
    m_problems->setText(lines(problems));
    m_problems->setVisible(!problems.empty());
    std::size_t pieces = 0;
    int done = 0;
    for (const SheetStop* stop : m_cut.stops()) {
        pieces += stop->pieces.size();
        done += stop->cut;
    }
    m_done->setText(tr("%1 of %2 cut").arg(done).arg(pieces));
}

const SheetStop* SheetTab::currentStop() const {
    const std::vector<const SheetStop*> stops = m_cut.stops();
    const int row = cursorRow(*m_stops);
    return row >= 0 && row < static_cast<int>(stops.size()) ? stops[static_cast<std::size_t>(row)]
                                                            : nullptr;
}

void SheetTab::showPieces() {
    const SheetStop* stop = currentStop();
    m_pieces->setRows(stop ? stopPieceRows(m_cut, *stop) : std::vector<FigureRow>());
}

std::vector<std::size_t> SheetTab::chosenPieces() const {
    std::vector<std::size_t> places;
    if (m_pieces->table()->hasFocus()) {
        if (const SheetStop* stop = currentStop()) {
            for (const std::size_t row : chosenRows(*m_pieces))
                places.push_back(stop->pieces[row]);
        }
        return places;
    }
    const std::vector<const SheetStop*> stops = m_cut.stops();
    for (const std::size_t row : chosenRows(*m_stops))
        places.insert(places.end(), stops[row]->pieces.begin(), stops[row]->pieces.end());
    return places;
}

void SheetTab::tick(PieceState state) {
    m_cut.tick(tickable(m_cut.figures().sheet, chosenPieces(), state), state);
}

void SheetTab::tickTyped() {
    const auto tick = typedTick(m_cut.figures().sheet, utf8(m_typed->text()));
    if (!tick) {
        m_cut.desk().refuse(tick.error());
        m_typed->selectAll(); // to be typed anew
        return;
    }
    if (tick->pieces.empty() || m_cut.tick(tick->pieces, tick->state))
        m_typed->clear();
}

} // namespace miterbook
