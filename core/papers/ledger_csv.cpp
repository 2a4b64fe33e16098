// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/ledger_csv.h"

#include "bill/journal_lines.h"
#include "papers/cells.h"
#include "papers/write_paper.h"

namespace miterbook {

namespace {

Cell amountCell(Money money) {
    return money == Money() ? Cell() : moneyCell(money, {});
}

} // namespace

std::string ledgerCsv(const Book& book, Date from, Date to) {
    const BillingSetup& setup = book.billing();
    PaperTable table;
    table.columns = {{"Date"}, {"Document"}, {"Account"}, {"Debit"}, {"Credit"}, {"Memo"}};
    for (const JournalLine& line :
        journalLines(allBills(book), allPayments(book), from, to, setup.accounts(), setup.prefix)) {
        table.rows.push_back({PaperTable::Kind::plain,
            {Cell::of(isoDate(line.date)), Cell::of(line.document), Cell::of(line.account),
                amountCell(line.debit), amountCell(line.credit), Cell::of(line.memo)}});
    }
    Paper paper;
    paper.name = "journal";
    paper.blocks.emplace_back(std::move(table));
    return paperCsv(paper);
}

} // namespace miterbook
