// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book_fixture.h"
#include "io/schedule_reading.h"

#include <gtest/gtest.h>

namespace miterbook {

/// Reads schedules of one kind into the fixture's plan.
class ScheduleReader : public BookFixture {
protected:
    explicit ScheduleReader(ScheduleKind k)
        : kind(k) {}

    void read(std::string_view text, const std::vector<HeaderChoice>& choices = {}) {
        auto result = readSchedule(kind, text, book, {plan, main}, choices);
        ASSERT_TRUE(result.ok()) << result.error().sentence;
        reading = *result;
    }

    /// The row of a schedule that has one; an empty one with a failure unless `rejects` says which
    /// text is to be rejected.
    ScheduleRow row(std::string_view text, std::string_view rejects = {}) {
        read(text);
        for (const Rejection& each : reading.rejected)
            EXPECT_EQ(each.text, rejects) << each.reason;
        if (!rejects.empty())
            EXPECT_EQ(reading.rejected.size(), 1U);
        else
            EXPECT_EQ(reading.rows.size(), 1U);
        return reading.rows.empty() ? ScheduleRow() : reading.rows[0];
    }

    Opening one(std::string_view text, std::string_view rejects = {}) {
        return row(text, rejects).opening.value_or(Opening());
    }

    /// The sentence of the one rejection.
    std::string rejectedAt(std::string_view text) {
        read(text);
        EXPECT_EQ(reading.rejected.size(), 1U);
        return reading.rejected.empty() ? "(nothing rejected)"
                                        : ScheduleReading::sentence(reading.rejected[0]);
    }

    ScheduleKind kind;
    ScheduleReading reading;
};

} // namespace miterbook
