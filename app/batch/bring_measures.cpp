// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/bring_measures.h"

#include "batch/find.h"
#include "io/file_bytes.h"
#include "io/measures.h"

namespace miterbook {

Result<void> bringMeasures(OpenedBook& opened, const std::string& house, const std::string& path,
    bool goodRows, Console& console) {
    const auto id = findHouse(opened.book(), house);
    if (!id)
        return id.error();
    const Id<Plan> plan = opened.book().house(*id)->work;
    if (const auto open = opened.workbook.openPlan(plan); !open)
        return open;
    const auto bytes = readFileBytes(path);
    if (!bytes)
        return bytes.error();
    const std::string file = fileName(path);
    const auto reading = readMeasures(*bytes, opened.book(), plan);
    if (!reading)
        return badInput(file + ": " + reading.error().sentence);
    for (const MeasureRejection& rejection : reading->rejected)
        console.err << file << ", " << MeasureReading::sentence(rejection) << '\n';
    for (const std::string& title : reading->unmapped)
        console.out << file << ": the column \"" << title << "\" was not understood and left out\n";
    if (!reading->rejected.empty() && !goodRows) {
        return badInput(file + ": " + std::to_string(reading->rejected.size())
            + " rows could not be read, so none was brought in; --good-rows brings in the other "
            + std::to_string(reading->rows.size()) + ".");
    }
    const Edit edit = measuresEdit(opened.book(), opened.workbook.ids(), plan, *reading, file);
    if (const auto done = opened.perform(edit); !done)
        return done;
    console.out << file << ": " << reading->rows.size() << " measures brought in\n";
    return {};
}

} // namespace miterbook
