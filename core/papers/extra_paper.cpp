// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/bill_papers.h"

#include "papers/bill_facts.h"
#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

namespace miterbook {

namespace {

/// What is asked for; a note below its title in words of their own.
PaperTable extraTable(const Book& book, const Extra& extra) {
    PaperTable table;
    table.title = "Work beyond the contract";
    table.columns = {{"What", PaperColumn::Align::left, 50},
        {extra.price < Money() ? "Comes off" : "Price", PaperColumn::Align::right, 16}};
    table.rows.push_back(moneyRow(extra.title, extra.price, book));
    return table;
}

/// What the contract is with it.
PaperTable withItTable(const Book& book, const Extra& extra, const Contract& contract) {
    Money others;
    for (const Extra& each : extrasOf(book, extra.house)) {
        if (isAgreed(each) && each.id != extra.id)
            others += each.price;
    }
    const Money agreed = valueOf(scheduleOfValues(contract.values, {}));
    PaperTable table;
    table.title = "The contract with it, before tax";
    table.columns = {{"", PaperColumn::Align::left, 50}, {"Amount", PaperColumn::Align::right, 16}};
    table.rows.push_back(moneyRow("Contract", agreed, book));
    if (others != Money())
        table.rows.push_back(moneyRow("Extras agreed before", others, book));
    table.rows.push_back(moneyRow("This extra", extra.price, book));
    table.rows.push_back(
        moneyRow("Contract with it", agreed + others + extra.price, book, PaperTable::Kind::total));
    return table;
}

std::string standing(const Extra& extra) {
    if (extra.state == ExtraState::dropped)
        return "Dropped: not to be done.";
    return "NOT APPROVED. To be priced and signed before the work is done.";
}

} // namespace

Paper extraPaper(const Book& book, const Extra& extra, Date date) {
    const PaperJob job = houseJob(book, extra.house, date);
    Paper paper = beginPaper("extra", "Extra", job);
    const Contract* contract = book.contract(extra.house);
    const Plan* plan = book.plan(job.plan);
    const Builder* builder = plan ? book.builderOf(*plan) : nullptr;
    addDate(paper, job, "Date", date);
    addAddressee(paper, book, builder ? builder->id : Id<Builder>());
    addHouse(paper, job);
    if (contract)
        addFact(paper, "Purchase order", contract->purchaseOrder);
    addFact(paper, "Asked by", extra.askedBy);
    addDate(paper, job, "Asked on", extra.asked);
    if (isAgreed(extra)) {
        addFact(paper, "Approved by", extra.approvedBy);
        addDate(paper, job, "Approved on", extra.approved);
    } else {
        paper.blocks.emplace_back(Paragraph{Paragraph::Style::caution, {standing(extra)}});
    }
    paper.blocks.emplace_back(extraTable(book, extra));
    addSection(paper, "Note", Paragraph::Style::body, typedLines(extra.note));
    if (contract && extra.state != ExtraState::dropped)
        paper.blocks.emplace_back(withItTable(book, extra, *contract));
    paper.blocks.emplace_back(Signatures{{paper.letterhead.front(), "Date",
        builder ? oneLine(builder->name) : std::string("Builder"), "Date"}});
    paper.totals.emplace_back("price", moneyCell(extra.price, book.prices.shop().currency));
    return paper;
}

} // namespace miterbook
