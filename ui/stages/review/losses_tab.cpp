// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/review/losses_tab.h"

#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "stages/review/review_desk.h"
#include "widgets/plain_text.h"

#include <QLabel>
#include <QVBoxLayout>

namespace miterbook {

LossesTab::LossesTab(ReviewDesk& review, QWidget* parent)
    : QWidget(parent)
    , m_review(review)
    , m_view(new FigureView(tr("What loses money"),
          {tr("Plan"), tr("Piece of work"), tr("Houses"), tr("Lost"), tr("Per house"),
              tr("Hours over the bid")})) {
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(hintLabel(tr("Pieces of work whose price did not cover their cost, over all "
                                   "finished houses of a plan; the dearest first.")));
    layout->addWidget(m_view, 1);
    connect(&review, &ReviewDesk::changed, this, [this] {
        if (isVisible())
            refresh();
    });
}

void LossesTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    refresh();
}

void LossesTab::refresh() {
    std::vector<FigureRow> rows;
    for (const Loss& loss : losses(m_review.results())) {
        FigureRow row;
        row.cells = {wordCell(groupName(m_review.book(), CompareBy::plan, loss.plan.value())),
            wordCell(word(loss.work)), countCell(loss.houses), moneyCell(loss.lost),
            moneyCell(loss.perHouse()), hoursCell(loss.over)};
        row.from = tr(
            "Over all finished houses of the plan: cost with the hours used, less price.");
        rows.push_back(std::move(row));
    }
    m_view->setRows(std::move(rows));
}

} // namespace miterbook
