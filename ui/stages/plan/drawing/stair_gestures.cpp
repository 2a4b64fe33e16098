// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/stair_gestures.h"

#include "plan/plan_checks.h"

namespace miterbook {

namespace {

std::string nameOf(const Stair& stair) {
    return stair.name.empty() ? "stair" : stair.name;
}

Result<Edit> stored(const DrawnLevel& level, IdSource& ids, Stair stair, const std::string& doing) {
    if (auto fine = checkStair(stair, Missing::allowed); !fine)
        return fine.error();
    EditBuilder edit(level.book(), doing + " " + nameOf(stair));
    storeRow(edit, ids, level.target(), std::move(stair));
    return edit.take();
}

Stair newStair(const DrawnLevel& level) {
    Stair stair;
    stair.plan = level.target().plan;
    stair.position = nextPosition(level.sheet().of<Stair>());
    stair.name = "Stair " + std::to_string(level.sheet().of<Stair>().size() + 1);
    return stair;
}

} // namespace

Result<Edit> stairDrawn(const DrawnLevel& level, IdSource& ids, std::optional<std::int64_t> chosen,
    std::vector<PlanPoint> walkLine) {
    if (!level.level())
        return badInput("The plan needs a level before a stair can be drawn on it.");
    const Stair* there = chosen ? level.stair(*chosen) : nullptr;
    const bool places = there && there->walkLine.empty();
    Stair stair = places ? *there : newStair(level);
    stair.level = level.level();
    if (const Room* room = level.roomAt(walkLine.front()))
        stair.room = Id<Room>(rowKey(*room));
    stair.walkLine = std::move(walkLine);
    return stored(level, ids, std::move(stair), places ? "Place" : "Draw");
}

Result<Edit> stairWidened(const DrawnLevel& level, IdSource& ids, std::int64_t key, Length width) {
    const Stair* there = level.stair(key);
    if (!there)
        return Error{Fault::notFound, "Choose a stair first."};
    Stair stair = *there;
    stair.flightWidth = width;
    return stored(level, ids, std::move(stair), "Change the width of");
}

} // namespace miterbook
