// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/find.h"
#include "batch/opened_book.h"
#include "job/start_house.h"

namespace miterbook {

namespace {

void declareStart(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
    addValue(parser, "plan", "P", "the plan it is built from");
    addValue(parser, "house", "NAME", "what to call the house");
    addValue(parser, "elevation", "E", "the plan's elevation");
    addValue(parser, "option", "O", "an option of the plan; may be given several times");
    addValue(parser, "lot", "LOT", "lot number");
    addValue(parser, "address", "TEXT", "where it stands");
}

Result<HouseStart> houseStart(const QCommandLineParser& parser, OpenedBook& opened) {
    HouseStart start;
    const auto plan = findPlan(opened.book(), value(parser, "plan"));
    if (!plan)
        return plan.error();
    if (const auto open = opened.workbook.openPlan(*plan); !open)
        return open.error();
    auto selection = findSelection(
        opened.book(), *plan, value(parser, "elevation"), values(parser, "option"));
    if (!selection)
        return selection.error();
    start.plan = *plan;
    start.selection = std::move(*selection);
    start.name = value(parser, "house");
    start.lot = value(parser, "lot");
    start.address = value(parser, "address");
    start.started = SystemClock().today();
    return start;
}

Result<void> runStart(const QCommandLineParser& parser, Console& console) {
    const auto path = positional(parser, 0, "in which book");
    if (!path)
        return path.error();
    if (const auto fewEnough = noMoreThan(parser, 1); !fewEnough)
        return fewEnough;
    if (!isSet(parser, "plan") || !isSet(parser, "house"))
        return badInput("Say which plan (--plan) and what to call the house (--house).");
    auto opened = openWorkbook(*path, OpenMode::write);
    if (!opened)
        return opened.error();
    const auto start = houseStart(parser, *opened);
    if (!start)
        return start.error();
    const auto edit = startHouse(opened->book(), opened->workbook.ids(), *start);
    if (!edit)
        return edit.error();
    if (const auto done = opened->perform(*edit); !done)
        return done;
    console.out << start->name << ": started.\n";
    return {};
}

} // namespace

const Command startCommand{"start", "start a house from a plan", declareStart, runStart};

} // namespace miterbook
