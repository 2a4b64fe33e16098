// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "store/file_header.h"
#include "store/safety/book_check.h"
#include "store/safety/book_place.h"

namespace miterbook {

namespace {

void declareCheck(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
}

Result<void> runCheck(const QCommandLineParser& parser, Console& console) {
    const auto book = positional(parser, 0, "which book");
    if (!book)
        return book.error();
    if (const auto fewEnough = noMoreThan(parser, 1); !fewEnough)
        return fewEnough;
    const auto report = checkBook(*book);
    if (!report)
        return report.error();
    if (const std::string warning = placeWarning(placeOf(*book)); !warning.empty())
        console.out << warning << '\n';
    for (const std::string& finding : report->findings)
        console.out << finding << '\n';
    if (!report->sound()) {
        return Error{Fault::storage,
            shownName(*book)
                + " is damaged. `miterbook backups` lists its backups; `miterbook salvage` reads "
                  "what can be read into a new book."};
    }
    console.out << "Nothing is wrong: " << report->rows << " rows agree with " << report->edits
                << " changes, " << report->papers << " issued papers are as they were issued.\n";
    return {};
}

} // namespace

const Command checkCommand{
    "check", "look at every page, row and issued paper of a book", declareCheck, runCheck};

} // namespace miterbook
