// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/bid_page.h"

#include "bid/explain.h"
#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "stages/bid/bid_rows.h"
#include "stages/bid/bid_setup_form.h"
#include "stages/bid/both_ways_tab.h"
#include "stages/bid/price_sheet_tab.h"
#include "stages/bid/risk_panel.h"
#include "stages/bid/sent_rows.h"
#include "stages/bid/sent_tab.h"
#include "stages/bid/what_if_tab.h"
#include "widgets/plain_text.h"
#include "widgets/scrolled.h"

#include <QLabel>
#include <QSplitter>
#include <QTabWidget>
#include <QVBoxLayout>

#include <algorithm>

namespace miterbook {

namespace {

QLabel* namedLabel(const QString& name, QWidget* parent) {
    QLabel* label = plainLabel({}, parent);
    label->setAccessibleDescription(name);
    return label;
}

/// "5.8 days of 8 hours for a crew of 2".
QString crewTime(Hours hours, const PriceBook& prices) {
    const auto active = std::ranges::count_if(
        prices.of<CrewMember>(), [](const auto& entry) { return entry.second.active; });
    const int people = std::max(1, static_cast<int>(active));
    return BidPage::tr("%1 for a crew of %2").arg(text(crewDays(hours, people))).arg(people);
}

} // namespace

BidPage::BidPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_form(new BidSetupForm(desk)) {
    auto* right = new QWidget(this);
    auto* column = new QVBoxLayout(right);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(summary());
    column->addWidget(tables(), 1);
    auto* splitter = new QSplitter(this);
    splitter->addWidget(scrolled(m_form));
    splitter->addWidget(right);
    splitter->setStretchFactor(1, 1);
    splitter->setSizes({360, 900});
    splitter->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(splitter);
    connect(&figures, &FigureDesk::figured, this, [this] { refresh(); });
    refresh();
}

QWidget* BidPage::summary() {
    auto* box = new QWidget(this);
    auto* column = new QVBoxLayout(box);
    column->setContentsMargins(0, 0, 0, 0);
    m_price = namedLabel(tr("Price"), box);
    QFont large = m_price->font();
    large.setPointSizeF(large.pointSizeF() * 1.6);
    large.setBold(true);
    m_price->setFont(large);
    m_ratios = namedLabel(tr("Cost, hours and profit"), box);
    m_problems = namedLabel(tr("What keeps the price from being right"), box);
    QFont bold = m_problems->font();
    bold.setBold(true);
    m_problems->setFont(bold);
    column->addWidget(m_price);
    column->addWidget(m_ratios);
    m_notes = namedLabel(tr("Notes on the price"), box);
    column->addWidget(m_problems);
    column->addWidget(m_notes);
    return box;
}

QWidget* BidPage::tables() {
    auto* tabs = new QTabWidget(this);
    m_works = new FigureView(tr("By piece of work"),
        {tr("Piece of work"), tr("Hours"), tr("Labour"), tr("Material"), tr("Consumables"),
            tr("Overhead"), tr("Contingency"), tr("Allowances"), tr("Cost"), tr("Profit"),
            tr("Price")},
        this);
    m_lines = new FigureView(tr("Hours line by line"),
        {tr("Piece of work"), tr("Task"), tr("Conditions"), tr("Quantity"), tr("Unit"),
            tr("Minutes each"), tr("Factor"), tr("Hours"), tr("Labour"), tr("Piece price")},
        this);
    m_risk = new RiskPanel(m_desk, this);
    tabs->addTab(m_works, tr("By piece of work"));
    tabs->addTab(m_lines, tr("Hours line by line"));
    tabs->addTab(m_risk, tr("Risk"));
    m_bothWays = new BothWaysTab(m_desk, this);
    tabs->addTab(m_bothWays, tr("Piece and cost"));
    tabs->addTab(m_form->allowances(), tr("Allowances"));
    m_whatIf = new WhatIfTab(m_desk, m_figures, this);
    tabs->addTab(m_whatIf, tr("What if"));
    m_sheet = new PriceSheetTab(m_desk, this);
    tabs->addTab(m_sheet, tr("Plan set"));
    m_sent = new SentTab(m_desk, m_figures, this);
    m_wins = new FigureView(tr("Won and lost by builder"), winTitles(), this);
    m_wins->sayWhenEmpty(tr("No bid has been sent yet. Ctrl+Shift+B sends this one."));
    tabs->addTab(m_sent, tr("Sent"));
    tabs->addTab(m_wins, tr("Won and lost"));
    return tabs;
}

void BidPage::showJob(const JobRef& job) {
    m_form->showJob(job);
    m_sent->showJob(job);
    m_sheet->showJob(job);
    m_whatIf->showJob(job);
}

void BidPage::refresh() {
    const JobFigures& figures = m_figures.figures();
    refreshSummary();
    const PriceBook prices = pricesOfBid(m_desk.book().prices, figures.setup);
    m_works->setRows(workRows(figures, prices));
    m_lines->setRows(lineRows(figures, prices));
    m_bothWays->showFigures(m_figures.job(), figures);
    m_risk->showFigures(figures);
    m_wins->setRows(winRows(m_desk.book()));
}

void BidPage::refreshSummary() {
    const Estimate& estimate = m_figures.figures().estimate;
    const std::string symbol = m_desk.book().prices.shop().currency;
    const LengthUnit written = m_desk.book().prices.shop().unit;
    const auto money = [&](Money amount) { return text(formatMoney(amount, symbol)); };
    m_price->setText(tr("Price %1").arg(money(estimate.total.price)));
    QString ratios
        = tr("Cost %1 · profit %2 = %3 % markup on cost = %4 % margin on price · %5 hours "
             "at %6 · %7 a man-hour after material")
              .arg(money(estimate.total.cost()), money(estimate.total.profit),
                  text(formatPercent(estimate.markup)), text(formatPercent(estimate.margin)),
                  text(formatHours(estimate.total.hours)), money(estimate.crewRate),
                  money(estimate.perManHour));
    if (estimate.perSquareFoot > Money())
        ratios += tr(" · %1 a %2, as a check")
                      .arg(money(floorPriceSaid(estimate.perSquareFoot, written)),
                          text(floorUnitName(written)));
    m_ratios->setText(ratios + u'\n' + crewTime(estimate.total.hours, m_desk.book().prices));
    m_notes->setText(lines(estimate.notes));
    m_notes->setVisible(!estimate.notes.empty());
    m_problems->setText(lines(estimate.problems));
    m_problems->setVisible(!estimate.problems.empty());
}

} // namespace miterbook
