// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/bring_hours.h"
#include "batch/bring_measures.h"
#include "batch/bring_prices.h"
#include "batch/bring_schedules.h"
#include "batch/commands.h"
#include "io/file_bytes.h"
#include "io/plan_text.h"

namespace miterbook {

namespace {

void declareBring(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
    parser.addPositionalArgument(
        QStringLiteral("FILE"), QStringLiteral("plan exchange files"), QStringLiteral("[FILE...]"));
    addValue(parser, "builder", "B", "with --plan: whose plan the schedules belong to");
    addValue(
        parser, "plan", "P", "with --builder: the plan; begun when there is none of that name");
    addValue(parser, "windows", "F.csv", "window schedule");
    addValue(parser, "doors", "F.csv", "door schedule");
    addValue(parser, "rooms", "F.csv", "room-finish schedule");
    addValue(parser, "level", "L", "the level of rows that name none");
    addValue(parser, "house", "H", "with --measures: the house that was measured");
    addValue(parser, "measures", "F.csv", "measures of a house's openings");
    addValue(
        parser, "hours", "F.csv", "hours: date, who, house, what, hours, units finished, note");
    addValue(
        parser, "prices", "F.csv", "a supplier's price list: profile, length, price, per, from");
    addValue(parser, "supplier", "S", "with --prices: whose list it is");
    addValue(
        parser, "from", "D", "with --prices: the day they begin, as 2026-11-25; today if not said");
    addValue(
        parser, "per", "P", "with --prices: stick, foot, \"100 ft\" or metre; stick if not said");
    addSwitch(parser, "good-rows", "bring in the good rows of a file that has bad ones");
}

/// All plans of one file in one edit; nothing is kept of a file that cannot be read whole.
Result<void> bringPlan(OpenedBook& opened, const std::string& path, Console& console) {
    const auto bytes = readFileBytes(path);
    if (!bytes)
        return bytes.error();
    const auto edit = readPlanText(opened.book(), opened.workbook.ids(), *bytes);
    if (!edit)
        return badInput(fileName(path) + ": " + edit.error().sentence);
    if (const auto done = opened.perform(*edit); !done)
        return done;
    console.out << fileName(path) << ": " << edit->sentence << '\n';
    return {};
}

Result<void> bringPlans(OpenedBook& opened, const QStringList& files, Console& console) {
    for (const QString& file : files) {
        if (const auto done = bringPlan(opened, file.toStdString(), console); !done)
            return done;
    }
    return {};
}

SchedulesToBring schedules(const QCommandLineParser& parser) {
    return {value(parser, "builder"), value(parser, "plan"), value(parser, "level"),
        value(parser, "rooms"), value(parser, "windows"), value(parser, "doors"),
        isSet(parser, "good-rows")};
}

Result<void> runBring(const QCommandLineParser& parser, Console& console) {
    const auto path = positional(parser, 0, "which book to bring them into");
    if (!path)
        return path.error();
    const SchedulesToBring wanted = schedules(parser);
    const bool anySchedule = !(wanted.rooms + wanted.windows + wanted.doors).empty();
    const QStringList files = parser.positionalArguments().mid(1);
    const bool measures = isSet(parser, "measures");
    const bool hours = isSet(parser, "hours");
    const bool prices = isSet(parser, "prices");
    if (files.isEmpty() && !anySchedule && !measures && !hours && !prices) {
        return badInput("Say what to bring in: plan exchange files, schedules of a plan, measures "
                        "of a house, hours, or a supplier's prices.");
    }
    if (measures != isSet(parser, "house"))
        return badInput(
            "Say --house and --measures together: which house was measured, and the file.");
    if (anySchedule && (wanted.builder.empty() || wanted.plan.empty()))
        return badInput("Say whose plan the schedules belong to: --builder and --plan.");
    auto opened = openWorkbook(*path, OpenMode::write);
    if (!opened)
        return opened.error();
    if (const auto done = bringPlans(*opened, files, console); !done)
        return done;
    if (anySchedule) {
        if (const auto done = bringSchedules(*opened, wanted, console); !done)
            return done;
    }
    if (hours) {
        const std::string file = value(parser, "hours");
        if (const auto done = bringHours(*opened, file, isSet(parser, "good-rows"), console); !done)
            return done;
    }
    if (prices) {
        if (const auto done = bringPrices(*opened, parser, console); !done)
            return done;
    }
    if (!measures)
        return {};
    return bringMeasures(*opened, value(parser, "house"), value(parser, "measures"),
        isSet(parser, "good-rows"), console);
}

} // namespace

const Command bringCommand{"bring",
    "bring in plan exchange files, and schedules, measures, hours or prices as CSV", declareBring,
    runBring};

} // namespace miterbook
