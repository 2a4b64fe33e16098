// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/pay_tab.h"

#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "hours/done_units.h"
#include "job/week_pay.h"
#include "papers/payroll_words.h"
#include "stages/hours/pay_settings.h"
#include "stages/hours/week_columns.h"
#include "stages/hours/week_desk.h"
#include "widgets/plain_text.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

namespace {

FigureRow payRow(const PayLine& line, LengthUnit written) {
    FigureRow row;
    row.cells = {wordCell(line.name), wordCell(word(line.basis)), hoursCell(line.time),
        hoursCell(line.overtime), moneyCell(line.wages), moneyCell(line.piecePay),
        moneyCell(line.extra), moneyCell(line.total())};
    QStringList pieces;
    for (const PieceEarning& piece : line.pieces) {
        const Unit unit = doneUnit(piece.work, piece.task);
        pieces << PayTab::tr("%1 %2 at %3 = %4")
                      .arg(text(formatQuantity(amountSaid(piece.done, unit, written))),
                          whatText(piece.work, piece.task, TimeKind::work, written),
                          text(formatUnitPrice(priceSaid(piece.rate, unit, written))),
                          text(formatMoney(piece.pay)));
    }
    row.from = PayTab::tr("%1 hours at the wage.").arg(text(formatHours(line.paidByHour)))
        + (pieces.isEmpty() ? QString() : u' ' + pieces.join(QStringLiteral("; ")) + u'.');
    return row;
}

} // namespace

PayTab::PayTab(WeekDesk& week, QWidget* parent)
    : QWidget(parent)
    , m_week(week)
    , m_view(new FigureView(tr("Pay of the week"),
          {tr("Who"), tr("Paid"), tr("Hours"), tr("Overtime"), tr("By the hour"),
              tr("By the piece"), tr("Overtime extra"), tr("Before deductions")}))
    , m_problems(plainLabel({})) {
    m_problems->setAccessibleName(tr("What keeps the pay sheet from being right"));
    auto* told = new QWidget;
    auto* left = new QVBoxLayout(told);
    left->setContentsMargins(0, 0, 0, 0);
    left->addWidget(m_view, 1);
    left->addWidget(m_problems);
    left->addWidget(hintLabel(text(payrollCaution())));
    auto* split = new QSplitter;
    split->addWidget(told);
    split->addWidget(new PaySettings(week.desk()));
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    split->setSizes(
        {fontMetrics().averageCharWidth() * 120, fontMetrics().averageCharWidth() * 60});
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(split);
    connect(&week, &WeekDesk::changed, this, &PayTab::refresh);
    refresh();
}

QString PayTab::problems() const {
    return m_problems->text();
}

void PayTab::refresh() {
    m_sheet = weekPay(m_week.book(), m_week.first());
    std::vector<FigureRow> rows;
    for (const PayLine& line : m_sheet.lines)
        rows.push_back(payRow(line, m_week.book().prices.shop().unit));
    if (!rows.empty()) {
        FigureRow total;
        total.cells.assign(8, emptyCell());
        total.cells.front() = {tr("all"), {}};
        total.cells.back() = moneyCell(m_sheet.total);
        total.strong = true;
        rows.push_back(std::move(total));
    }
    m_view->setRows(std::move(rows));
    m_problems->setText(lines(m_sheet.problems));
    m_problems->setVisible(!m_sheet.problems.empty());
}

} // namespace miterbook
