// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/plan_names.h"
#include "io/schedule_reading.h"

#include <optional>
#include <string>
#include <string_view>

namespace miterbook {

/// One record of a schedule, read cell by cell; what cannot be read is added to the reading's
/// rejections, what is left unset to its remarks.
class RowReader {
public:
    RowReader(const CsvRecord& record, ScheduleReading& reading, const PlanNames& names)
        : m_record(record)
        , m_reading(reading)
        , m_names(names) {}

    int line() const { return m_record.line; }
    const PlanNames& names() const { return m_names; }
    bool rejected() const { return m_rejected; }

    bool has(ScheduleField field) const;
    /// The cell's text; empty where the file has no such column.
    std::string_view text(ScheduleField field) const;
    /// Whether the cell is empty, a dash or the like: nothing is said.
    bool silent(ScheduleField field) const;

    void reject(ScheduleField field, std::string reason);
    /// "line 5, W4: ..." beside a good row.
    void remark(std::string_view sentence);

    /// A length in the header's unit; nothing when silent or (rejected) unreadable.
    std::optional<Length> length(ScheduleField field);
    /// As length, and reads `2-8` as feet and inches.
    std::optional<Length> doorLength(ScheduleField field);
    std::optional<Size> size(ScheduleField field);
    /// A whole number; `otherwise` when silent.
    int whole(ScheduleField field, int low, int high, int otherwise);
    bool yes(ScheduleField field);

    /// The room a cell names; none with a remark when the plan has none of that name.
    const Room* room(ScheduleField field);
    /// The level a cell names; nullptr with a remark when the plan lacks it.
    const Level* level();
    /// The profile a cell names; rejected when the book has none.
    Id<Profile> profile(ScheduleField field, ProfileUse use);

private:
    /// The cell with its header's unit after each bare number.
    std::string measure(ScheduleField field) const;
    LengthUnit bareUnit(ScheduleField field) const;

    const CsvRecord& m_record;
    ScheduleReading& m_reading;
    const PlanNames& m_names;
    bool m_rejected = false;
};

/// "no", "none", "-" and the like, and nothing at all.
bool saysNone(std::string_view text);
/// "yes", "x", "1" and the like.
bool saysYes(std::string_view text);

} // namespace miterbook
