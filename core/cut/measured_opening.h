// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/bench.h"
#include "cut/measure.h"
#include "takeoff/takeoff.h"

#include <string>
#include <vector>

namespace miterbook {

/// One opening as measured, ready to be cut for. Where nothing was read it has the plan's size.
struct MeasuredOpening {
    Opening opening;    ///< one of it, with the size that its casing is cut for
    Length rightHeight; ///< a leg on a floor is cut to its own height; else the same as the left
    Length widthSlack;  ///< half of what the readings of the width are apart
    Length heightSlack;
    bool measured = false; ///< both width and height were read
};

/// What a measure makes of the plan's opening. The sides of a frame, and legs that stand on a
/// stool, are equal and cut for the middle of the readings, so that what the opening is out is
/// shared by both reveals. The head of a door is cut for the top of the opening. A polygon keeps
/// the plan's sides. `measure` may be null.
MeasuredOpening measuredOpening(const Opening& opening, const Measure* measure);

/// Something that the readings of one opening tell, with what follows from it in numbers and what
/// to do about it.
struct MeasureRemark {
    enum class Weight { ask, stop };
    Weight weight = Weight::ask;
    std::string sentence;

    bool operator==(const MeasureRemark&) const = default;
};

/// Out of square, bowed, far from the plan, jamb proud or shy. `faceWidth` is the casing's.
std::vector<MeasureRemark> remarksOn(const Measure& measure, const Opening& opening,
    const Bench& bench, Length faceWidth, LengthStyle style);

/// "W4", or "W4.2" for the second of several alike.
std::string unitName(const std::string& mark, int unit, int count);

/// Readings taken at an opening: sizes and diagonals that are not zero.
int readingsIn(const Measure& measure);

} // namespace miterbook
