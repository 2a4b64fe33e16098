// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/number_text.h"
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/sample_logo.h"
#include "batch/sample_year.h"

namespace miterbook {

namespace {

void declareSample(QCommandLineParser& parser) {
    parser.addPositionalArgument(
        QStringLiteral("BOOK"), QStringLiteral("a book with plans to build houses from"));
    addValue(
        parser, "date", "D", "the day on which the year ends, as 2026-11-25; today if not said");
    addValue(parser, "houses", "N", "how many finished houses", "14");
}

Result<void> runSample(const QCommandLineParser& parser, Console& console) {
    const auto path = positional(parser, 0, "which book");
    if (!path)
        return path.error();
    if (const auto fewEnough = noMoreThan(parser, 1); !fewEnough)
        return fewEnough;
    SampleYear year;
    year.today = SystemClock().today();
    if (isSet(parser, "date")) {
        const auto date = parseIsoDate(value(parser, "date"));
        if (!date || *date == noDate)
            return badInput("Write --date as 2026-11-25.");
        year.today = *date;
    }
    const auto houses = parseWhole(value(parser, "houses"), "The number of houses", 1, 500);
    if (!houses)
        return houses.error();
    year.finished = *houses;
    auto opened = openWorkbook(*path, OpenMode::write);
    if (!opened)
        return opened.error();
    if (const auto drawn = addSampleLogo(*opened); !drawn)
        return drawn;
    if (const auto made = addSampleYear(*opened, year); !made)
        return made;
    const JobTables& jobs = opened->book().jobs;
    console.out << "An invented year: " << year.finished << " houses finished, 2 underway; "
                << jobs.of<Invoice>().size() << " invoices issued, " << jobs.of<Payment>().size()
                << " payments.\n";
    return {};
}

} // namespace

const Command sampleCommand{"sample",
    "give a book a year of invented houses, hours and bills to try things on", declareSample,
    runSample};

} // namespace miterbook
