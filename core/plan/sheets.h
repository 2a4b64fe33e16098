// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/angle.h"
#include "basics/bytes.h"
#include "plan/plan.h"
#include "plan/point.h"

namespace miterbook {

/// The largest file of a builder's sheet that the book takes.
inline constexpr std::size_t largestSheet = 25'000'000;

/// A file of the builder's that was copied into the book: a page is drawn under a level.
struct SheetFile {
    Id<SheetFile> id;
    Id<Plan> plan;
    std::string name; ///< of the file it came from
    Bytes content;

    bool operator==(const SheetFile&) const = default;
};

template <>
struct Describe<SheetFile> {
    static constexpr std::string_view table = "sheet_file";
    static constexpr std::string_view noun = "builder's sheet";
    static constexpr void allFields(auto&& take) {
        take(field("id", &SheetFile::id), field("plan", &SheetFile::plan),
            field("name", &SheetFile::name), field("content", &SheetFile::content));
    }
};

/// One page of a file as it lies under a level: turned about its upper left corner, which lies at
/// `x`, `y`.
struct Underlay {
    Id<Underlay> id;
    Id<Plan> plan;
    Id<Level> level;
    Id<SheetFile> file;
    int page = 1;
    Length scale; ///< what one point of a PDF, pixel or drawing unit is in the house
    Length x;
    Length y;
    Angle turn;        ///< clockwise
    int strength = 50; ///< per cent of its ink that is shown
    bool hidden = false;

    bool operator==(const Underlay&) const = default;
};

template <>
struct Describe<Underlay> {
    static constexpr std::string_view table = "underlay";
    static constexpr std::string_view noun = "sheet under a level";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Underlay::id), field("plan", &Underlay::plan),
            field("level", &Underlay::level), field("file", &Underlay::file),
            field("page", &Underlay::page), field("scale", &Underlay::scale),
            field("x", &Underlay::x), field("y", &Underlay::y), field("turn", &Underlay::turn),
            field("strength", &Underlay::strength), field("hidden", &Underlay::hidden));
    }
};

/// A reminder of the "did you forget" list that was looked at and found to be in order.
struct Dismissal {
    Id<Dismissal> id;
    Id<Plan> plan;
    std::string sentence; ///< the reminder's
    std::string reason;

    bool operator==(const Dismissal&) const = default;
};

template <>
struct Describe<Dismissal> {
    static constexpr std::string_view table = "dismissal";
    static constexpr std::string_view noun = "dismissed reminder";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Dismissal::id), field("plan", &Dismissal::plan),
            field("sentence", &Dismissal::sentence), field("reason", &Dismissal::reason));
    }
};

} // namespace miterbook
