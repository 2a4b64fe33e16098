// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "store/safety/salvage.h"

namespace miterbook {

namespace {

void declareSalvage(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the damaged book"));
    parser.addPositionalArgument(QStringLiteral("NEW"), QStringLiteral("the book to make"));
}

Result<void> runSalvage(const QCommandLineParser& parser, Console& console) {
    const auto book = positional(parser, 0, "which book");
    if (!book)
        return book.error();
    const auto target = positional(parser, 1, "which book to make");
    if (!target)
        return target.error();
    if (const auto fewEnough = noMoreThan(parser, 2); !fewEnough)
        return fewEnough;
    const auto report = salvageBook(*book, *target, SystemClock());
    if (!report)
        return report.error();
    console.out << *target << ": " << report->kept << " rows read, " << report->restored
                << " more taken from the journal, " << report->papers
                << " issued papers as they were issued.\n";
    for (const std::string& sentence : report->lost)
        console.out << sentence << '\n';
    if (report->complete())
        console.out << "Nothing is known to be lost.\n";
    return {};
}

} // namespace

const Command salvageCommand{"salvage", "read what can be read of a damaged book into a new one",
    declareSalvage, runSalvage};

} // namespace miterbook
