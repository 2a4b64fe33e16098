// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/level_house.h"

#include <array>
#include <random>

namespace miterbook {

namespace {

void addProfile(PriceBook& prices, std::int64_t id, const char* name, ProfileUse use, Length width,
    int spring) {
    Profile row;
    row.id = Id<Profile>(id);
    row.name = name;
    row.use = use;
    row.thickness = Length::sixteenths(11);
    row.width = width;
    row.material = "primed poplar";
    row.springAngle = Angle::degrees(spring);
    prices.of<Profile>().put(row);
    for (const int feet : {12, 14, 16}) {
        Stick stick;
        stick.id = Id<Stick>(id * 100 + feet);
        stick.profile = row.id;
        stick.length = Length::feet(feet);
        stick.price = Money::cents(feet * 113);
        prices.of<Stick>().put(stick);
    }
}

Opening opening(std::int64_t id, const LevelHouse& house, std::string mark, int width, int height) {
    Opening row;
    row.id = Id<Opening>(id);
    row.plan = house.plan;
    row.level = house.level;
    row.position = static_cast<int>(id);
    row.mark = std::move(mark);
    row.width = Length::inches(width);
    row.height = Length::inches(height);
    return row;
}

/// Off by up to 1/16 in, as tapes say it: in 32nds.
Measure measured(const Opening& opening, std::mt19937& random) {
    const auto off = [&] { return Length::thirtySeconds(static_cast<int>(random() % 5) - 2); };
    Measure row;
    row.id = Id<Measure>(opening.id.value() + 10'000);
    row.plan = opening.plan;
    row.opening = opening.id;
    row.position = opening.position;
    row.widthTop = row.widthBottom = opening.width + off();
    row.heightLeft = row.heightRight = opening.height + off();
    return row;
}

void addOpenings(LevelHouse& house, int windows, int doors) {
    constexpr std::array heights{36, 48, 54, 60, 66};
    constexpr std::array widths{24, 30, 36};
    SheetRows& sheet = house.book.sheets[house.plan];
    std::mt19937 random(7);
    std::int64_t id = 100;
    for (int i = 0; i < windows + doors; ++i) {
        const bool window = i < windows;
        const auto at = static_cast<std::size_t>(i);
        Opening row = window
            ? opening(++id, house, "W" + std::to_string(i + 1), widths[at % 3], heights[at % 5])
            : opening(++id, house, "D" + std::to_string(i - windows + 1), i % 2 ? 32 : 30, 80);
        if (!window) {
            row.kind = OpeningKind::prehungDoor;
            row.style = TrimStyle::threeSided;
            row.sidesCased = 2;
        }
        sheet.of<Opening>().put(row);
        sheet.of<Measure>().put(measured(row, random));
    }
}

void addRooms(LevelHouse& house, int rooms) {
    constexpr std::array names{"Great room", "Kitchen", "Dining", "Bedroom 1", "Bedroom 2", "Bath",
        "Hall", "Den", "Laundry"};
    for (int i = 0; i < rooms; ++i) {
        Room room;
        room.id = Id<Room>(5000 + i);
        room.plan = house.plan;
        room.level = house.level;
        room.position = i;
        room.name = names[static_cast<std::size_t>(i) % names.size()];
        for (const int feet : {11 + i % 4, 9 + i % 3, 11 + i % 4, 9 + i % 3})
            room.walls.push_back(Wall{Length::feet(feet)});
        room.crownChoice = i % 3 == 0 ? RunChoice::plan : RunChoice::none;
        house.book.sheets[house.plan].of<Room>().put(room);
    }
}

} // namespace

LevelHouse::LevelHouse(int windows, int doors, int rooms) {
    Shop shop;
    shop.id = Id<Shop>(1);
    shop.name = "Lindqvist Trim";
    book.prices.of<Shop>().put(shop);
    addProfile(book.prices, 21, "Flat casing", ProfileUse::casing, Length::sixteenths(52), 0);
    addProfile(book.prices, 22, "Eased base", ProfileUse::base, Length::sixteenths(84), 0);
    addProfile(book.prices, 23, "Cove crown", ProfileUse::crown, Length::sixteenths(58), 38);
    Plan row;
    row.id = plan;
    row.house = house;
    row.name = "Alder 2";
    row.windowCasing = row.doorCasing = Id<Profile>(21);
    row.base = Id<Profile>(22);
    row.crown = Id<Profile>(23);
    book.jobs.of<Plan>().put(row);
    House built;
    built.id = house;
    built.plan = built.work = plan;
    built.name = "Lot 14";
    built.address = "14 Ferry Lane";
    book.jobs.of<House>().put(built);
    Level first;
    first.id = level;
    first.plan = plan;
    first.name = "Main level";
    book.sheets[plan].of<Level>().put(first);
    addOpenings(*this, windows, doors);
    addRooms(*this, rooms);
}

JobFigures LevelHouse::figures() const {
    return figuresFor(book, plan, {}, Effort::quick);
}

PaperJob LevelHouse::job() const {
    return {book, plan, house, level,
        Date(std::chrono::year(2026), std::chrono::November, std::chrono::day(25))};
}

} // namespace miterbook
