// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/words.h"

#include <vector>

namespace miterbook {

/// A plain shape that stands for what a moulding looks like from its end. It is for the eye:
/// nothing is reckoned from it.
enum class Section {
    squareEdge,
    easedEdge,
    beveled,
    bullnose,
    quarterRound,
    cove,
    ogee,
    stepped,
    round,
};

template <>
struct Words<Section> {
    static constexpr std::array list{
        Word{Section::squareEdge, "square edge"},
        Word{Section::easedEdge, "eased edge"},
        Word{Section::beveled, "beveled"},
        Word{Section::bullnose, "bullnose"},
        Word{Section::quarterRound, "quarter round"},
        Word{Section::cove, "cove"},
        Word{Section::ogee, "ogee"},
        Word{Section::stepped, "stepped"},
        Word{Section::round, "round"},
    };
};

struct SectionPoint {
    double along = 0; ///< across the width, from the thin edge
    double out = 0;   ///< from the back of the moulding to its face

    bool operator==(const SectionPoint&) const = default;
};

/// The closed outline of a section in the unit of `thickness` and `width`, both over 0: it begins
/// at the back, turns to the left, does not cross itself and fills a rectangle of width x thickness
/// from edge to edge.
std::vector<SectionPoint> sectionOutline(Section section, double thickness, double width);

/// A section that springs: the face's edges lie on wall and ceiling, and what would be behind these
/// is cut off. `spring` in degrees from the wall, between 0 and 90.
std::vector<SectionPoint> sprungOutline(
    Section section, double thickness, double width, double spring);

} // namespace miterbook
