// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "book/said_words.h"
#include "hours/done_units.h"
#include "job/week_pay.h"
#include "papers/cells.h"
#include "papers/exact_numbers.h"
#include "papers/heading.h"
#include "papers/payroll_words.h"
#include "papers/plain_text.h"
#include "papers/week_papers.h"

namespace miterbook {

namespace {

PaperTable payTable(const PaySheet& sheet, std::string_view sign) {
    using enum PaperColumn::Align;
    PaperTable table;
    table.columns = {{"Who", left, 24}, {"Paid", left, 16}, {"Hours", right, 10},
        {"Overtime", right, 11}, {"By the hour", right, 14}, {"By the piece", right, 14},
        {"Overtime extra", right, 16}, {"Pay", right, 14}};
    for (const PayLine& line : sheet.lines) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(oneLine(line.name)), Cell::of(std::string(word(line.basis))),
                hoursCell(line.time), hoursCell(line.overtime), moneyCell(line.wages, sign),
                moneyCell(line.piecePay, sign), moneyCell(line.extra, sign),
                moneyCell(line.total(), sign)}});
    }
    PaperTable::Row total{PaperTable::Kind::total, {Cell::of("All")}};
    total.cells.resize(7);
    total.cells.push_back(moneyCell(sheet.total, sign));
    table.rows.push_back(std::move(total));
    return table;
}

PaperTable pieceTable(const PaySheet& sheet, const Shop& shop) {
    const LengthUnit written = shop.unit;
    using enum PaperColumn::Align;
    PaperTable table;
    table.title = "By the piece";
    table.columns = {{"Who", left, 24, true}, {"What", left, 24}, {"Finished", right, 12},
        {"For one", right, 12}, {"Pay", right, 14}};
    for (const PayLine& line : sheet.lines) {
        for (const PieceEarning& piece : line.pieces) {
            const bool whole = piece.task == Task::other;
            const auto what = whole ? word(piece.work) : said(piece.task, written);
            const Unit unit = doneUnit(piece.work, piece.task);
            const std::string rate = formatUnitPrice(priceSaid(piece.rate, unit, written));
            table.rows.push_back({PaperTable::Kind::plain,
                {Cell::of(oneLine(line.name)), Cell::of(std::string(what)),
                    quantityCell(amountSaid(piece.done, unit, written)),
                    {shop.currency + rate, rate}, moneyCell(piece.pay, shop.currency)}});
        }
    }
    return table;
}

} // namespace

Paper paySheetPaper(const PaperJob& job, const JobFigures&) {
    Paper paper = beginPaper("pay-sheet", "Pay sheet", shopWide(job));
    addWeek(paper, job);
    const std::string& sign = job.book.prices.shop().currency;
    const PaySheet sheet = weekPay(job.book, paperWeek(job));
    paper.blocks.emplace_back(
        Paragraph{Paragraph::Style::caution, {std::string(payrollCaution())}});
    addSection(paper, "To be mended first", Paragraph::Style::list, sheet.problems);
    if (sheet.lines.empty()) {
        paper.blocks.emplace_back(
            Paragraph{Paragraph::Style::body, {"No hours are written for this week."}});
        return paper;
    }
    paper.blocks.emplace_back(payTable(sheet, sign));
    if (const PaperTable pieces = pieceTable(sheet, job.book.prices.shop()); !pieces.rows.empty())
        paper.blocks.emplace_back(pieces);
    paper.totals.emplace_back("pay", moneyCell(sheet.total, sign));
    return paper;
}

} // namespace miterbook
