// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/check_words.h"
#include "plan/outline.h"
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

void checkBreaks(RowCheck& check, const Room& room) {
    constexpr Length rounding = Length::sixteenths(1);
    for (const BaseBreak& each : room.breaks) {
        const auto wall = static_cast<std::size_t>(each.wall);
        if (each.wall < 1 || wall > room.walls.size()) {
            check.must(false,
                "has " + std::string(word(each.kind)) + " in wall " + std::to_string(each.wall)
                    + ", which it does not have");
            return;
        }
        check.length("start of its " + std::string(word(each.kind)), each.from);
        check.length("length of its " + std::string(word(each.kind)), each.length);
        check.must(
            each.length > Length(), "has " + std::string(word(each.kind)) + " without a length");
        check.must(each.from + each.length <= room.walls[wall - 1].length + rounding,
            "has " + std::string(word(each.kind)) + " past the end of wall "
                + std::to_string(each.wall));
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
    checkBreaks(check, room);
    if (const auto result = check.result(); !result || room.outline.empty())
        return result;
    const std::string name = namedOr(room.name.empty() ? room.mark : room.name, "room");
    if (auto outline = checkOutline(room.outline, name); !outline)
        return outline;
    check.must(isClockwise(room.outline), "is drawn the wrong way round");
    check.must(agree(room.walls, room.outline), "has walls that are not those of its outline");
    return check.result();
}

} // namespace miterbook
