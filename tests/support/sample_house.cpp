// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/sample_house.h"

#include <map>

namespace miterbook {

namespace {

constexpr Length ft(int feet, int inches = 0) {
    return Length::inches(feet * 12 + inches);
}

Id<Profile> firstOf(const PriceBook& prices, ProfileUse use) {
    for (const auto& [id, profile] : prices.of<Profile>()) {
        if (profile.use == use)
            return id;
    }
    return {};
}

std::vector<Wall> rectangle(Length width, Length depth) {
    std::vector<Wall> walls(4);
    walls[0].length = walls[2].length = width;
    walls[1].length = walls[3].length = depth;
    return walls;
}

/// Builds the house row by row.
class HouseBuilder {
public:
    HouseBuilder(const PriceBook& prices, IdSource& ids)
        : m_prices(prices)
        , m_ids(ids) {
        Plan& plan = m_house.plan;
        plan.id = ids.next<Plan>();
        plan.name = "Alder 2400";
        plan.floorArea = 2400;
        plan.windowCasing = plan.doorCasing = firstOf(prices, ProfileUse::casing);
        plan.stool = firstOf(prices, ProfileUse::stool);
        plan.jamb = firstOf(prices, ProfileUse::jamb);
        plan.base = firstOf(prices, ProfileUse::base);
        plan.shoe = firstOf(prices, ProfileUse::shoe);
        plan.crown = firstOf(prices, ProfileUse::crown);
    }

    SampleHouse build() {
        m_level = level("Main", false);
        mainRooms();
        m_level = level("Upper", true);
        upperRooms();
        doors();
        windows();
        closets();
        stair();
        elevation();
        crownPack();
        return std::move(m_house);
    }

private:
    Id<Level> level(std::string name, bool upper) {
        Level row;
        row.id = m_ids.next<Level>();
        row.plan = m_house.plan.id;
        row.position = ++m_position;
        row.name = std::move(name);
        row.upper = upper;
        m_house.rows.of<Level>().put(row);
        return row.id;
    }

    void room(
        const std::string& name, RoomUse use, Length width, Length depth, Length baseBreak = {}) {
        Room row;
        row.id = m_ids.next<Room>();
        row.plan = m_house.plan.id;
        row.position = ++m_position;
        row.level = m_level;
        row.name = name;
        row.use = use;
        row.walls = rectangle(width, depth);
        if (name == "Dining") // open to the great room
            row.walls.back().corner = Corner::open;
        row.baseBreak = baseBreak;
        m_rooms[name] = row;
        m_house.rows.of<Room>().put(row);
    }

    void mainRooms() {
        room("Entry", RoomUse::hall, ft(12), ft(10));
        room("Great room", RoomUse::room, ft(22), ft(18));
        room("Kitchen", RoomUse::kitchen, ft(18), ft(14), ft(20));
        room("Dining", RoomUse::room, ft(14), ft(13));
        room("Study", RoomUse::room, ft(12), ft(12));
        room("Powder", RoomUse::bath, ft(5), ft(6), ft(2));
        room("Laundry", RoomUse::laundry, ft(6), ft(8), ft(6));
        room("Pantry", RoomUse::pantry, ft(4), ft(5));
        room("Coat closet", RoomUse::closet, ft(3), ft(5));
    }

    void upperRooms() {
        room("Upper hall", RoomUse::hall, ft(26), ft(5));
        room("Bed 1", RoomUse::room, ft(20), ft(16));
        room("Bath 1", RoomUse::bath, ft(12), ft(10), ft(13));
        room("Closet 1", RoomUse::closet, ft(8), ft(7));
        room("Bed 2", RoomUse::room, ft(13), ft(12));
        room("Bed 3", RoomUse::room, ft(13), ft(12));
        room("Bed 4", RoomUse::room, ft(13), ft(12));
        room("Bath 2", RoomUse::bath, ft(9), ft(6), ft(11));
        room("Linen", RoomUse::closet, ft(2), ft(3));
        room("Closet 2", RoomUse::closet, ft(6), ft(2));
        room("Closet 3", RoomUse::closet, ft(6), ft(2));
        room("Closet 4", RoomUse::closet, ft(2), ft(5));
    }

    Opening opening(const std::string& mark, const std::string& in, Length width, Length height) {
        Opening row;
        row.id = m_ids.next<Opening>();
        row.plan = m_house.plan.id;
        row.position = ++m_position;
        row.room = m_rooms.at(in).id;
        row.level = m_rooms.at(in).level;
        row.mark = mark;
        row.width = width;
        row.height = height;
        return row;
    }

    void door(const std::string& mark, OpeningKind kind, const std::string& in,
        const std::string& to, Length width, Lockset lockset) {
        Opening row = opening(mark, in, width, ft(6, 8));
        row.kind = kind;
        row.style = TrimStyle::threeSided;
        row.sidesCased = to.empty() ? 1 : 2;
        if (!to.empty())
            row.otherRoom = m_rooms.at(to).id;
        row.lockset = lockset;
        row.deadbolt = kind == OpeningKind::exteriorDoor;
        row.doorStop = kind == OpeningKind::prehungDoor;
        row.hand = m_house.rows.of<Opening>().size() % 2 == 0 ? Hand::left : Hand::right;
        m_house.rows.of<Opening>().put(row);
    }

    void doors() {
        using enum OpeningKind;
        door("D1", exteriorDoor, "Entry", "", ft(3), Lockset::keyed);
        door("D2", exteriorDoor, "Laundry", "", ft(2, 8), Lockset::keyed);
        door("D3", prehungDoor, "Entry", "Powder", ft(2, 6), Lockset::privacy);
        door("D4", prehungDoor, "Kitchen", "Pantry", ft(2, 4), Lockset::passage);
        door("D5", prehungDoor, "Kitchen", "Laundry", ft(2, 8), Lockset::passage);
        door("D6", prehungDoor, "Entry", "Coat closet", ft(2), Lockset::passage);
        door("D7", doubleDoor, "Great room", "Study", ft(5), Lockset::passage);
        door("D8", prehungDoor, "Upper hall", "Bed 1", ft(2, 8), Lockset::privacy);
        door("D9", prehungDoor, "Bed 1", "Bath 1", ft(2, 6), Lockset::privacy);
        door("D10", prehungDoor, "Bath 1", "Closet 1", ft(2, 4), Lockset::passage);
        door("D11", prehungDoor, "Upper hall", "Bed 2", ft(2, 6), Lockset::privacy);
        door("D12", prehungDoor, "Upper hall", "Bed 3", ft(2, 6), Lockset::privacy);
        door("D13", prehungDoor, "Upper hall", "Bed 4", ft(2, 6), Lockset::privacy);
        door("D14", prehungDoor, "Upper hall", "Bath 2", ft(2, 4), Lockset::privacy);
        door("D15", prehungDoor, "Upper hall", "Linen", ft(1, 8), Lockset::passage);
        door("D16", bifoldDoor, "Bed 2", "Closet 2", ft(5), Lockset::none);
        door("D17", bifoldDoor, "Bed 3", "Closet 3", ft(5), Lockset::none);
        door("D18", prehungDoor, "Bed 4", "Closet 4", ft(2), Lockset::passage);
    }

    void window(const std::string& mark, const std::string& in, TrimStyle style, Length width,
        Length height, int count) {
        Opening row = opening(mark, in, width, height);
        row.style = style;
        row.count = count;
        m_house.rows.of<Opening>().put(row);
    }

    void windows() {
        const auto stool = TrimStyle::stoolAndApron;
        const auto frame = TrimStyle::pictureFrame;
        window("W1", "Great room", stool, ft(3), ft(5), 3);
        window("W2", "Dining", stool, ft(3), ft(5), 2);
        window("W3", "Kitchen", stool, ft(4), ft(3), 1);
        window("W4", "Study", stool, ft(3), ft(5), 2);
        window("W5", "Entry", frame, ft(1, 6), ft(4), 1);
        window("W6", "Powder", stool, ft(2), ft(3), 1);
        window("W7", "Bed 1", frame, ft(3), ft(5), 3);
        window("W8", "Bath 1", frame, ft(4), ft(3), 1);
        window("W9", "Bed 2", frame, ft(3), ft(4, 6), 2);
        window("W10", "Bed 3", frame, ft(5), ft(4), 1);
        window("W11", "Bed 4", frame, ft(5), ft(4), 1);
    }

    void closet(const std::string& room, ClosetKind kind, Length width, int shelves = 1) {
        Closet row;
        row.id = m_ids.next<Closet>();
        row.plan = m_house.plan.id;
        row.position = ++m_position;
        row.room = m_rooms.at(room).id;
        row.level = m_rooms.at(room).level;
        row.name = room;
        row.kind = kind;
        row.width = width;
        row.depth = Length::inches(11);
        row.shelves = shelves;
        row.shelf = firstOf(m_prices, ProfileUse::shelf);
        row.rod = firstOf(m_prices, ProfileUse::rod);
        row.cleat = firstOf(m_prices, ProfileUse::cleat);
        m_house.rows.of<Closet>().put(row);
    }

    void closets() {
        closet("Pantry", ClosetKind::shelves, ft(4), 5);
        closet("Coat closet", ClosetKind::shelfAndRod, ft(5));
        closet("Closet 1", ClosetKind::doubleRod, ft(8));
        closet("Linen", ClosetKind::shelves, ft(2), 5);
        closet("Closet 2", ClosetKind::shelfAndRod, ft(6));
        closet("Closet 3", ClosetKind::shelfAndRod, ft(6));
        closet("Closet 4", ClosetKind::shelfAndRod, ft(5));
    }

    void stair() {
        Stair row;
        row.id = m_ids.next<Stair>();
        row.plan = m_house.plan.id;
        row.position = ++m_position;
        row.room = m_rooms.at("Entry").id;
        row.level = m_rooms.at("Entry").level;
        row.name = "Stair";
        row.skirtLength = ft(15);
        row.skirt = firstOf(m_prices, ProfileUse::board);
        row.rail = RailStyle::postToPost;
        row.railLength = ft(12);
        row.handrail = firstOf(m_prices, ProfileUse::handrail);
        row.newels = 2;
        row.balusterRun = ft(11);
        m_house.rows.of<Stair>().put(row);
    }

    Id<Variant> variant(VariantKind kind, std::string name) {
        Variant row;
        row.id = m_ids.next<Variant>();
        row.plan = m_house.plan.id;
        row.kind = kind;
        row.name = std::move(name);
        m_house.rows.of<Variant>().put(row);
        return row.id;
    }

    const Opening& marked(const std::string& mark) const {
        const auto& rows = m_house.rows.of<Opening>();
        auto it = rows.begin();
        while (it->second.mark != mark)
            ++it;
        return it->second;
    }

    void elevation() {
        m_house.elevation = variant(VariantKind::elevation, "B");
        Opening wider = marked("W5");
        wider.replaces = wider.id;
        wider.id = m_ids.next<Opening>();
        wider.variant = m_house.elevation;
        wider.width = ft(2);
        m_house.rows.of<Opening>().put(wider);
        Opening third = opening("W4B", "Study", ft(3), ft(5));
        third.variant = m_house.elevation;
        third.style = TrimStyle::stoolAndApron;
        m_house.rows.of<Opening>().put(third);
    }

    void crownPack() {
        m_house.crownPack = variant(VariantKind::option, "Crown pack");
        for (const char* name : {"Great room", "Dining"}) {
            Room row = m_rooms.at(name);
            row.replaces = row.id;
            row.id = m_ids.next<Room>();
            row.variant = m_house.crownPack;
            row.crownChoice = RunChoice::plan;
            m_house.rows.of<Room>().put(row);
        }
    }

    const PriceBook& m_prices;
    IdSource& m_ids;
    SampleHouse m_house;
    std::map<std::string, Room> m_rooms;
    Id<Level> m_level;
    int m_position = 0;
};

} // namespace

SampleHouse sampleHouse(const PriceBook& prices, IdSource& ids) {
    return HouseBuilder(prices, ids).build();
}

} // namespace miterbook
