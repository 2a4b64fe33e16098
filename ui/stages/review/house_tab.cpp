// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/review/house_tab.h"

#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "hours/done_units.h"
#include "job/house_stage.h"
#include "stages/review/review_desk.h"
#include "widgets/plain_text.h"

#include <QLabel>
#include <QVBoxLayout>

namespace miterbook {

namespace {

FigureRow workRow(const WorkResult& work, LengthUnit written) {
    const Unit unit = doneUnit(work.work);
    FigureRow row;
    row.cells = {wordCell(word(work.work)), hoursCell(work.bid), hoursCell(work.used),
        hoursCell(work.used - work.bid), moneyCell(work.price), moneyCell(work.bidCost),
        moneyCell(work.cost), moneyCell(work.bidProfit()), moneyCell(work.profit())};
    row.from = HouseTab::tr(
        "Cost is what was bid with the hours used in place of those bid, at the "
        "crew rate of the bid. %1 %2 were bid.")
                   .arg(text(formatQuantity(amountSaid(work.units, unit, written))),
                       text(unitText(unit, written)));
    return row;
}

FigureRow totalRow(const HouseResult& house) {
    FigureRow row;
    row.cells = {{HouseTab::tr("all"), {}}, hoursCell(house.bid), hoursCell(house.used),
        hoursCell(house.used - house.bid), moneyCell(house.price), emptyCell(),
        moneyCell(house.cost), moneyCell(house.bidProfit), moneyCell(house.profit())};
    row.from = HouseTab::tr("With %1 hours of waiting and callbacks, which nobody bids.")
                   .arg(text(formatHours(house.lost)));
    row.strong = true;
    return row;
}

} // namespace

HouseTab::HouseTab(ReviewDesk& review, QWidget* parent)
    : QWidget(parent)
    , m_review(review)
    , m_summary(plainLabel({}))
    , m_view(new FigureView(tr("Result of the house"),
          {tr("Piece of work"), tr("Hours bid"), tr("Used"), tr("Over"), tr("Price"),
              tr("Cost bid"), tr("Cost"), tr("Profit bid"), tr("Profit")})) {
    m_summary->setAccessibleDescription(tr("What the house came to"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_summary);
    layout->addWidget(m_view, 1);
    connect(&review, &ReviewDesk::changed, this, &HouseTab::refresh);
    refresh();
}

QString HouseTab::summary() const {
    return m_summary->text();
}

void HouseTab::refresh() {
    const House* house = m_review.house();
    std::vector<FigureRow> rows;
    if (!house) {
        m_summary->setText(tr("A house has a result, a plan has not: open a house, or compare the "
                              "houses of all plans on the next page."));
    } else if (!hasSoldBid(m_review.book(), house->work)) {
        m_summary->setText(tr("Nothing to hold its hours against yet: when the house is won (its "
                              "stage on the Houses screen), its bid is kept."));
    } else {
        const HouseResult result = resultOf(m_review.book(), *house);
        for (const WorkResult& work : result.works)
            rows.push_back(workRow(work, m_review.book().prices.shop().unit));
        rows.push_back(totalRow(result));
        const QString sign = text(m_review.book().prices.shop().currency);
        m_summary->setText(
            (isFinished(*house) ? tr("Profit %1%2, bid %1%3; %1%4 for each hour.")
                                : tr("Not finished: so far the profit would be "
                                     "%1%2, bid %1%3; %1%4 for each hour."))
                .arg(sign, text(formatMoney(result.profit())), text(formatMoney(result.bidProfit)),
                    text(formatMoney(result.profitPerHour()))));
    }
    m_view->setRows(std::move(rows));
}

} // namespace miterbook
