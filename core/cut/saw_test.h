// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/angle.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/length.h"
#include "plan/plan.h"

namespace miterbook {

/// A test cut at the saw as it stands at a house. They count until tape or fence is set anew and
/// they are taken away.
struct SawTest {
    Id<SawTest> id;
    Id<Plan> plan;
    Length set; ///< what the stop was set to; zero: only the corner was tested
    Length measured;
    Angle corner; ///< of two test cuts held together, of a square corner; 0: not tested

    bool operator==(const SawTest&) const = default;
};

template <>
struct Describe<SawTest> {
    static constexpr std::string_view table = "saw_test";
    static constexpr std::string_view noun = "test cut";
    static constexpr void allFields(auto&& take) {
        take(field("id", &SawTest::id), field("plan", &SawTest::plan),
            field("setting", &SawTest::set), field("measured", &SawTest::measured),
            field("corner", &SawTest::corner));
    }
};

} // namespace miterbook
