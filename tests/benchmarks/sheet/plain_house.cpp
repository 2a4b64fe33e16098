// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/plain_house.h"

#include "book/starter_book.h"

namespace miterbook {

namespace {

Id<Profile> profileCalled(const PriceBook& prices, std::string_view name) {
    for (const auto& [id, profile] : prices.of<Profile>()) {
        if (profile.name == name)
            return id;
    }
    return {};
}

Opening opening(IdSource& ids, Id<Level> level, int number) {
    Opening row;
    row.id = ids.next<Opening>();
    row.level = level;
    row.lockset = Lockset::none;
    row.width = Length::inches(24 + 2 * (number % 13));
    return row;
}

Room room(IdSource& ids, Id<Level> level, int number) {
    Room row;
    row.id = ids.next<Room>();
    row.level = level;
    row.name = "Room " + std::to_string(number + 1);
    const Length sides[] = {
        Length::inches(96 + 3 * (number % 29)), Length::inches(108 + 5 * (number % 17))};
    for (int i = 0; i < 4; ++i) {
        Wall wall;
        wall.length = sides[i % 2];
        row.walls.push_back(wall);
    }
    return row;
}

} // namespace

PlainHouse plainHouse(int windows, int doors) {
    IdSource ids(1000);
    PlainHouse house;
    house.prices = starterBook(ids);
    WholePlan& whole = house.whole;
    whole.plan.id = ids.next<Plan>();
    whole.plan.name = "Plain";
    whole.plan.windowCasing = whole.plan.doorCasing = profileCalled(house.prices, "WM 445 casing");
    whole.plan.base = profileCalled(house.prices, "WM 620 base");
    whole.plan.shoe = profileCalled(house.prices, "WM 126 shoe");
    Level level;
    level.id = ids.next<Level>();
    level.name = "Main";
    whole.levels.push_back(level);
    for (int i = 0; i < windows; ++i) {
        Opening window = opening(ids, level.id, i);
        window.mark = "W" + std::to_string(i + 1);
        window.style = TrimStyle::pictureFrame;
        window.height = Length::inches(30 + 3 * (i % 17));
        whole.openings.push_back(window);
    }
    for (int i = 0; i < doors; ++i) {
        Opening door = opening(ids, level.id, i);
        door.mark = "D" + std::to_string(i + 1);
        door.kind = OpeningKind::prehungDoor;
        door.style = TrimStyle::threeSided;
        door.sidesCased = 2;
        door.height = Length::inches(80);
        whole.openings.push_back(door);
    }
    for (int i = 0; i < (windows + doors) / 3; ++i)
        whole.rooms.push_back(room(ids, level.id, i));
    return house;
}

} // namespace miterbook
