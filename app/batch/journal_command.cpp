// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/opened_book.h"
#include "batch/output_file.h"
#include "papers/ledger_csv.h"

namespace miterbook {

namespace {

void declareJournal(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
    addValue(parser, "from", "D", "the first day, as 2026-11-01");
    addValue(parser, "to", "D", "the last day; today if not said");
    addValue(parser, "csv", "F", "write the lines as CSV (- prints them)", "-");
}

Result<Date> dayOf(const QCommandLineParser& parser, const char* name, Date otherwise) {
    if (!isSet(parser, name))
        return otherwise;
    auto day = parseIsoDate(value(parser, name));
    if (day && *day == noDate)
        return badInput("--" + std::string(name) + " is empty; write it as 2026-11-25.");
    return day;
}

Result<void> runJournal(const QCommandLineParser& parser, Console& console) {
    const auto path = positional(parser, 0, "of which book");
    if (!path)
        return path.error();
    if (const auto fewEnough = noMoreThan(parser, 1); !fewEnough)
        return fewEnough;
    const auto from = dayOf(parser, "from", std::chrono::year(1900) / 1 / 1);
    const auto to = dayOf(parser, "to", SystemClock().today());
    if (!from || !to)
        return from ? to.error() : from.error();
    const auto opened = openWorkbook(*path, OpenMode::look);
    if (!opened)
        return opened.error();
    return writeOutput(value(parser, "csv"), ledgerCsv(opened->book(), *from, *to), console);
}

} // namespace

const Command journalCommand{"journal",
    "invoices, credit notes and payments as lines for any ledger: CSV", declareJournal, runJournal};

} // namespace miterbook
