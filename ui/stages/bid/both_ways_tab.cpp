// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/both_ways_tab.h"

#include "book/said_words.h"
#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "stages/bid/bid_rows.h"
#include "widgets/plain_text.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace miterbook {

namespace {

FigureRow bothWaysRow(const EstimateLine& line, const LineBothWays& both, const Shop& shop) {
    const std::string& currency = shop.currency;
    const Unit unit = unitOf(line.task);
    FigureRow row;
    const auto piece = [&](Money amount) { return both.byPiece ? moneyCell(amount) : emptyCell(); };
    const Money byPiece = both.byPiece.value_or(Money());
    row.cells = {wordCell(word(line.work)), wordCell(said(line.task, shop.unit)),
        wordCell(said(line.conditions, shop.unit)),
        quantityCell(amountSaid(line.quantity, unit, shop.unit)),
        wordCell(unitText(unit, shop.unit)), moneyCell(both.cost), moneyCell(both.byCost),
        piece(byPiece), piece(byPiece - both.byCost),
        wordCell(both.isByPiece ? "the piece" : "cost"), wordCell(bothWaysInWords(both, currency))};
    row.strong = both.loses();
    row.from = BothWaysTab::tr(
        "Cost: %1 of labour, the rest its share of material, consumables and "
        "overhead. By cost: that with the bid's profit.")
                   .arg(text(formatMoney(line.labour, currency)));
    return row;
}

} // namespace

BothWaysTab::BothWaysTab(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_words(plainLabel({}, this))
    , m_lines(new FigureView(tr("Piece price against cost"),
          {tr("Piece of work"), tr("Task"), tr("Conditions"), tr("Quantity"), tr("Unit"),
              tr("Cost"), tr("By cost"), tr("By the piece"), tr("Difference"), tr("Priced by"),
              tr("In words")},
          this)) {
    m_words->setAccessibleDescription(tr("Which lines lose money"));
    auto* other = new QPushButton(tr("Price this line the other wa&y"));
    other->setAutoDefault(false);
    connect(other, &QPushButton::clicked, this, &BothWaysTab::switchLine);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_words);
    column->addWidget(m_lines, 1);
    column->addWidget(other, 0, Qt::AlignLeft);
}

QString BothWaysTab::words() const {
    return m_words->text();
}

void BothWaysTab::showFigures(const JobRef& job, const JobFigures& figures) {
    m_job = job;
    m_setup = figures.setup;
    const PriceBook prices = pricesOfBid(m_desk.book().prices, m_setup);
    const auto both = linesBothWays(
        figures.estimate, figures.takeoff, figures.sticks, prices, m_setup);
    std::vector<FigureRow> rows;
    m_tasks.clear();
    m_hasPiecePrice.clear();
    for (std::size_t i = 0; i < both.size(); ++i) {
        rows.push_back(bothWaysRow(figures.estimate.lines[i], both[i], prices.shop()));
        m_tasks.push_back(figures.estimate.lines[i].task);
        m_hasPiecePrice.push_back(both[i].byPiece.has_value());
    }
    m_lines->setRows(std::move(rows));
    const auto summary = bothWaysSummary(figures.estimate, both, prices.shop());
    const bool any = std::ranges::count(m_hasPiecePrice, true) > 0;
    m_words->setText(!any
            ? tr("No task of this house has a piece price. Type your prices for one opening, piece "
                 "or running length in the book, under Piece prices.")
            : summary.empty() ? tr("At your piece prices every line covers its cost.")
                              : miterbook::lines(summary));
}

void BothWaysTab::switchLine() {
    const int row = m_lines->currentRow();
    if (row < 0 || !m_job) {
        m_desk.refuse(Error{Fault::badInput, "Choose a line in the table first."});
        return;
    }
    const auto at = static_cast<std::size_t>(row);
    const std::string task(said(m_tasks[at], m_desk.book().prices.shop().unit));
    if (!m_hasPiecePrice[at]) {
        m_desk.refuse(Error{Fault::notFound, "The book has no piece price for \"" + task + "\"."});
        return;
    }
    BidSetup setup = withOtherWay(m_setup, m_tasks[at]);
    if (!setup.id)
        setup.id = m_desk.ids().next<BidSetup>();
    const bool byPiece = wayOf(setup, m_tasks[at]) == Pricing::piecePrices;
    m_desk.perform(putEdit(m_desk.book(),
        "Price " + task + (byPiece ? " by the piece" : " by its cost"), std::move(setup)));
}

} // namespace miterbook
