// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/price_sheet_tab.h"

#include "basics/number_text.h"
#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "job/order_check.h"
#include "widgets/long_work.h"
#include "widgets/plain_text.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace miterbook {

namespace {

FigureCell movedCell(const SheetMove& move) {
    if (!move.moved())
        return emptyCell();
    const Money change = move.change();
    const QString plain = text(formatMoney(change));
    return {change > Money() ? u'+' + plain : plain, static_cast<double>(change.cents())};
}

std::vector<FigureRow> moveRows(const std::vector<SheetMove>& moves) {
    std::vector<FigureRow> rows;
    for (const SheetMove& move : moves) {
        FigureRow row;
        row.cells = {wordCell(move.plan), wordCell(move.line), wordCell(move.elevation),
            move.after ? moneyCell(*move.after) : emptyCell(),
            move.before ? moneyCell(*move.before) : emptyCell(),
            move.before || !move.after ? movedCell(move) : emptyCell()};
        row.strong = move.line == "Plan price";
        row.from = PriceSheetTab::tr("A whole estimate, or for an option the difference of two.");
        rows.push_back(std::move(row));
    }
    return rows;
}

QString listed(const std::vector<std::string>& words) {
    QStringList all;
    for (const std::string& each : words)
        all << text(each);
    return all.join(QStringLiteral(", "));
}

} // namespace

PriceSheetTab::PriceSheetTab(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_words(plainLabel({}, this))
    , m_prices(new FigureView(tr("Prices of the plan set"),
          {tr("Plan"), tr("Line"), tr("Elevation"), tr("Price"), tr("Before"), tr("Moved")}, this))
    , m_order(new QLineEdit(this))
    , m_orderWords(plainLabel({}, this)) {
    m_words->setAccessibleDescription(tr("What moved and why"));
    auto* again = new QPushButton(tr("&Reckon the whole set"));
    again->setAutoDefault(false);
    connect(again, &QPushButton::clicked, this, &PriceSheetTab::reckon);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(again, 0, Qt::AlignLeft);
    column->addWidget(m_words);
    column->addWidget(m_prices, 1);
    column->addWidget(orderPart());
    connect(&desk, &Desk::changed, this, [this](const Changes& changes) {
        gatherReasons(m_desk.book(), m_set, changes, m_changed);
        m_words->setText(why());
    });
}

QWidget* PriceSheetTab::orderPart() {
    auto* part = new QWidget;
    auto* row = new QHBoxLayout;
    auto* label = new QLabel(tr("The builder's &purchase order comes to"));
    label->setBuddy(m_order);
    m_order->setAccessibleName(tr("Total of the purchase order"));
    m_order->setMaximumWidth(fontMetrics().averageCharWidth() * 16);
    auto* check = new QPushButton(tr("Chec&k it"));
    check->setAutoDefault(false);
    connect(check, &QPushButton::clicked, this, &PriceSheetTab::checkPurchaseOrder);
    connect(m_order, &QLineEdit::returnPressed, this, &PriceSheetTab::checkPurchaseOrder);
    row->addWidget(label);
    row->addWidget(m_order);
    row->addWidget(check);
    row->addStretch(1);
    m_orderWords->setAccessibleName(tr("What the order says against the sheet"));
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(row);
    column->addWidget(m_orderWords);
    return part;
}

QString PriceSheetTab::words() const {
    return m_words->text();
}

QString PriceSheetTab::orderWords() const {
    return m_orderWords->text();
}

Id<PlanSet> PriceSheetTab::set() const {
    const Plan* plan = m_job ? m_desk.book().plan(m_job.plan) : nullptr;
    return plan ? plan->set : Id<PlanSet>();
}

void PriceSheetTab::showJob(const JobRef& job) {
    m_job = job;
    m_orderWords->clear();
    m_order->setEnabled(static_cast<bool>(job.house));
    m_order->setPlaceholderText(job.house ? QString() : tr("of a house"));
    if (set() == m_set)
        return;
    m_set = set();
    m_before.clear();
    m_sheet.clear();
    m_changed.clear();
    m_reasons.clear();
    showSheet();
}

bool PriceSheetTab::openSet() {
    const std::vector<Id<Plan>> plans = plansOf(m_desk.book(), m_set);
    return std::ranges::all_of(plans, [&](Id<Plan> plan) { return m_desk.openPlan(plan); });
}

void PriceSheetTab::reckon() {
    if (!m_set || !openSet())
        return;
    const Book book = m_desk.book(); // the work goes on beside the window
    std::vector<PlanPrices> sheet;
    const bool whole = runLong(this, tr("Reckoning the plan set"), [&](LongWork& work) {
        sheet = priceSheet(
            book, m_set, m_memory, Effort::thorough, [&work] { return work.stopped(); },
            [&work](int done, int all) { work.setStep(done, all); });
    });
    if (!whole)
        return; // the sheet before stays
    m_before = std::move(m_sheet);
    m_sheet = std::move(sheet);
    m_reasons = std::move(m_changed);
    m_changed.clear();
    showSheet();
}

QString PriceSheetTab::why() const {
    if (m_sheet.empty())
        return tr(
            "Every plan of the set under each elevation, and what each option adds or takes off.");
    QStringList sentences;
    const auto moves = sheetMoves(m_before, m_sheet);
    const auto moved = std::ranges::count_if(
        moves, [](const SheetMove& move) { return move.moved(); });
    if (m_before.empty())
        sentences << tr("Reckon again after a change to see what it moves.");
    else if (moved == 0)
        sentences << tr("No price has moved since the sheet before.");
    else
        sentences << counted(moved, tr("1 price has moved since the sheet before."),
            tr("%1 prices have moved since the sheet before."));
    if (!m_reasons.empty() && !m_before.empty())
        sentences << tr("Changed in between: %1.").arg(listed(m_reasons));
    if (!m_changed.empty())
        sentences << tr("Changed since this sheet: %1. Reckon it again.").arg(listed(m_changed));
    for (const PlanPrices& plan : m_sheet) {
        for (const std::string& problem : plan.problems)
            sentences << text(plan.name) + QStringLiteral(": ") + text(problem);
    }
    return sentences.join(u'\n');
}

void PriceSheetTab::showSheet() {
    m_words->setText(why());
    m_prices->setRows(moveRows(sheetMoves(m_before, m_sheet)));
}

void PriceSheetTab::checkPurchaseOrder() {
    const House* house = m_desk.book().house(m_job.house);
    const auto ordered = parseMoney(utf8(m_order->text()));
    if (!house || !ordered) {
        m_orderWords->setText(!house ? tr("A purchase order is checked for a house.")
                                     : text(ordered.error().sentence));
        return;
    }
    if (m_sheet.empty() || !m_changed.empty())
        reckon();
    house = m_desk.book().house(m_job.house);
    const auto prices = std::ranges::find(m_sheet, house->plan, &PlanPrices::plan);
    if (prices == m_sheet.end()) {
        m_orderWords->setText(tr("The plan of this house is not on the price sheet."));
        return;
    }
    const auto checked = checkOrder(m_desk.book(), *prices, *house, *ordered);
    if (!checked) {
        m_orderWords->setText(text(checked.error().sentence));
        return;
    }
    const std::string symbol = m_desk.book().prices.shop().currency;
    QStringList said;
    for (const OrderCheck::Part& part : checked->parts)
        said << text(part.name) + QStringLiteral(" ") + text(formatMoney(part.amount, symbol));
    QString words
        = tr("By the sheet: %1 = %2. ")
              .arg(said.join(QStringLiteral(" + ")), text(formatMoney(checked->sheet, symbol)));
    if (checked->difference() == Money())
        words += tr("The order agrees.");
    else
        words += tr("The order is %1 %2.")
                     .arg(text(formatMoney(checked->difference() < Money() ? -checked->difference()
                                                                           : checked->difference(),
                              symbol)),
                         checked->difference() < Money() ? tr("short") : tr("over"));
    m_orderWords->setText(
        (QStringList{words} << lines(checked->explanations)).join(u'\n').trimmed());
}

} // namespace miterbook
