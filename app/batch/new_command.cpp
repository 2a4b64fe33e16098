// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/opened_book.h"

namespace miterbook {

namespace {

void declare(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the file to make"));
}

Result<void> run(const QCommandLineParser& parser, Console& console) {
    const auto path = positional(parser, 0, "which file to make");
    if (!path)
        return path.error();
    if (const auto fewEnough = noMoreThan(parser, 1); !fewEnough)
        return fewEnough;
    const auto opened = createWorkbook(*path);
    if (!opened)
        return opened.error();
    console.out << *path << ": a new book with starter values; check them against your own.\n";
    return {};
}

} // namespace

const Command newCommand{"new", "make a book with the starter values", declare, run};

} // namespace miterbook
