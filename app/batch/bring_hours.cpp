// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/bring_hours.h"

#include "io/file_bytes.h"
#include "io/hours_edit.h"

namespace miterbook {

namespace {

void sayWhatIsLeftOut(const HoursReading& reading, const std::string& file, Console& console) {
    for (const HoursRejection& rejection : reading.rejected)
        console.err << file << ", " << HoursReading::sentence(rejection) << '\n';
    for (const std::string& title : reading.unmapped)
        console.out << file << ": the column \"" << title << "\" was not understood and left out\n";
    if (!reading.known.empty())
        console.out << file << ": " << reading.known.size() << " entries are in the book already\n";
}

} // namespace

Result<void> bringHours(
    OpenedBook& opened, const std::string& path, bool goodRows, Console& console) {
    const auto bytes = readFileBytes(path);
    if (!bytes)
        return bytes.error();
    const std::string file = fileName(path);
    const auto open = [&](Date first, Date last) { return opened.workbook.openDays(first, last); };
    const auto reading = readHoursAgainst(*bytes, opened.book(), SystemClock().today(), open);
    if (!reading)
        return badInput(file + ": " + reading.error().sentence);
    sayWhatIsLeftOut(*reading, file, console);
    if (!reading->rejected.empty() && !goodRows) {
        return badInput(file + ": " + std::to_string(reading->rejectedRows())
            + " rows could not be read, so none was brought in; --good-rows brings in the other "
            + std::to_string(reading->rows.size()) + ".");
    }
    const Edit edit = hoursEdit(opened.book(), opened.workbook.ids(), *reading, file);
    if (const auto done = opened.perform(edit); !done)
        return done;
    console.out << file << ": " << reading->rows.size() << " entries of hours brought in\n";
    return {};
}

} // namespace miterbook
