// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"
#include "basics/percent.h"
#include "book/piece_of_work.h"

namespace miterbook {

struct House;

/// How much of a piece of work of a house is done, as somebody said who looked at it. One for each
/// house and piece of work; it counts where nothing is ticked or written down as finished.
struct WorkDone {
    Id<WorkDone> id;
    Id<House> house;
    PieceOfWork work = PieceOfWork::doors;
    Percent done; ///< 0 to 100 %

    bool operator==(const WorkDone&) const = default;
};

template <>
struct Describe<WorkDone> {
    static constexpr std::string_view table = "work_done";
    static constexpr std::string_view noun = "share done";
    static constexpr void allFields(auto&& take) {
        take(field("id", &WorkDone::id), field("house", &WorkDone::house),
            field("work", &WorkDone::work), field("done", &WorkDone::done));
    }
};

} // namespace miterbook
