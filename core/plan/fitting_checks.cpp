// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/check_words.h"
#include "plan/marks.h"
#include "plan/outline.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr int mostOfAnything = 500;
constexpr std::size_t mostTurns = 20; // points of a stair's walking line

/// A walking line is none, or two points and more, each at a place of its own and near the house.
void checkWalkLine(RowCheck& check, const std::vector<PlanPoint>& line) {
    check.must(line.size() != 1, "is drawn by one point; a stair goes from its foot to its head");
    check.must(line.size() <= mostTurns, "turns too often to be drawn");
    check.must(std::ranges::adjacent_find(line) == line.end(),
        "has two points of its walking line at one place");
    check.must(std::ranges::all_of(line, isNearZero), "lies over 300 ft from the plan's zero");
}

} // namespace

Result<void> checkCloset(const Closet& closet, Missing missing) {
    RowCheck check(namedOr(closet.name, "closet"));
    check.length("shelf width", closet.width, longestOpening, missing);
    check.length("shelf depth", closet.depth, Length::feet(6), missing);
    check.number("count", closet.count, 1, mostOfAnything);
    if (closet.kind == ClosetKind::shelves)
        check.number("shelves", closet.shelves, 1, 50);
    return check.result();
}

Result<void> checkStair(const Stair& stair, Missing missing) {
    RowCheck check(namedOr(stair.name, "stair"));
    check.number("risers", stair.risers, stair.treadsAndRisers ? 1 : 0, 60);
    check.number("closed skirts", stair.closedSkirts, 0, 20);
    check.number("open skirts", stair.openSkirts, 0, 20);
    check.number("newels", stair.newels, 0, mostOfAnything);
    check.number("balusters", stair.balusters, 0, mostOfAnything);
    const bool boards = stair.skirt && stair.closedSkirts + stair.openSkirts > 0;
    check.length(
        "skirt length", stair.skirtLength, Length::feet(60), boards ? missing : Missing::allowed);
    check.length("rail length", stair.railLength, longestSensible,
        stair.rail == RailStyle::none ? Missing::allowed : missing);
    check.length("baluster run", stair.balusterRun);
    check.length("baluster width", stair.balusterWidth, Length::feet(1),
        stair.balusterRun > Length() ? missing : Missing::allowed);
    checkWalkLine(check, stair.walkLine);
    check.length("flight width", stair.flightWidth, Length::feet(20),
        stair.walkLine.empty() ? Missing::allowed : Missing::refused);
    return check.result();
}

Result<void> checkTreatment(const WallTreatment& treatment, Missing missing) {
    RowCheck check(namedOr(treatment.name, "wall treatment"));
    check.length("width", treatment.width, longestSensible, missing);
    check.length("height", treatment.height, Length::feet(60), missing);
    check.length("board spacing", treatment.spacing, Length::feet(20),
        treatment.board ? missing : Missing::allowed);
    return check.result();
}

Result<void> checkOtherWork(const OtherWork& other) {
    RowCheck check(namedOr(other.name, "other work"));
    check.must(other.quantity >= Quantity(), "has a negative quantity");
    check.must(other.quantity <= Quantity::count(100'000), "has a quantity over 100,000");
    check.must(agrees(other), "has marks on the plan that come to another quantity");
    check.length("length", other.length);
    check.must(other.material >= Money(), "has a negative price for its material");
    return check.result();
}

} // namespace miterbook
