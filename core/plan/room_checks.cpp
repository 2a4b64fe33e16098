// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/check_words.h"
#include "plan/room_text.h"

namespace miterbook {

namespace {

constexpr Length highestCeiling = Length::feet(60);

void checkWalls(RowCheck& check, const std::vector<Wall>& walls) {
    for (std::size_t i = 0; i < walls.size(); ++i) {
        const std::string wall = "wall " + std::to_string(i + 1);
        check.length(wall, walls[i].length);
        check.must(walls[i].length > Length(), "has a " + wall + " without a length");
        check.must(walls[i].angle > Angle() && walls[i].angle < Angle::degrees(180),
            "has a corner after " + wall + " that is not between 0 and 180 degrees");
    }
}

} // namespace

Result<void> checkLevel(const Level& level, Missing missing) {
    RowCheck check(namedOr(level.name, "level"));
    check.must(!level.name.empty() || missing == Missing::allowed, "has no name");
    check.length("ceiling", level.ceiling, highestCeiling, missing);
    return check.result();
}

Result<void> checkVariant(const Variant& variant) {
    RowCheck check(namedOr(variant.name, word(variant.kind)));
    check.must(!variant.name.empty(), "has no name");
    return check.result();
}

Result<void> checkSwap(const Swap& swap) {
    RowCheck check("The swap");
    check.must(
        bool(swap.from) && bool(swap.to), "needs a profile to take away and one to put there");
    check.must(swap.from != swap.to, "takes a profile in place of itself");
    return check.result();
}

Result<void> checkRoom(const Room& room, Missing missing) {
    RowCheck check(namedOr(room.name.empty() ? room.mark : room.name, "room"));
    check.must(!room.name.empty() || !room.mark.empty() || missing == Missing::allowed,
        "has no name and no number");
    checkWalls(check, room.walls);
    check.length("ceiling", room.ceiling, highestCeiling);
    check.length("wall without base", room.baseBreak);
    check.length("extra base", room.extraBase);
    check.must(room.walls.empty() || room.baseBreak <= perimeter(room.walls),
        "has more wall without base than it has walls");
    return check.result();
}

} // namespace miterbook
