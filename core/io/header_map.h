// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/builder.h"
#include "io/csv_table.h"
#include "io/schedule.h"

#include "basics/table.h"

#include <optional>
#include <string>
#include <vector>

namespace miterbook {

/// The unit that a header says its bare numbers are in: "Width (mm)".
enum class HeaderUnit { unsaid, inches, feet, millimetres, centimetres, metres };

/// What the user says a header means; no field: leave the column out.
struct HeaderChoice {
    std::string header; ///< as it stands in the file, in any case
    std::optional<ScheduleField> field;

    bool operator==(const HeaderChoice&) const = default;
};

/// One column of the file and what it was taken for.
struct MappedHeader {
    std::string title;                  ///< as it stands in the file
    std::optional<ScheduleField> field; ///< nothing: not mapped, or left out
    HeaderUnit unit = HeaderUnit::unsaid;
    bool leftOut = false; ///< the shop or the user said to leave it out

    bool operator==(const MappedHeader&) const = default;
};

/// Which column of a file says what.
struct HeaderMap {
    std::size_t record = 0;            ///< which record of the table holds the headers
    std::vector<MappedHeader> headers; ///< one for each column of the file

    std::optional<std::size_t> columnOf(ScheduleField field) const;
    /// The header's own title, or the field's word where the file has no such column.
    std::string titleOf(ScheduleField field) const;
    std::vector<ScheduleField> fields() const;
    /// Titles of columns that mean nothing to us and were not left out on purpose.
    std::vector<std::string> unmapped() const;
};

/// Finds the record with the headers (schedules often begin with a title) and maps them: common
/// names first, then the shop's remembered corrections, then the user's choices, each over the one
/// before. Where two columns claim a field, the stronger and then the first has it.
HeaderMap mapHeaders(ScheduleKind kind, const CsvTable& table, const Table<HeaderName>& remembered,
    const std::vector<HeaderChoice>& choices);

} // namespace miterbook
