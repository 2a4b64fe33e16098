// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/starter_goods.h"

#include "book/caulk.h"

namespace miterbook {

namespace {

struct PartEntry {
    const char* name;
    PartUse use;
    int cents;
};

constexpr PartEntry parts[] = {
    {"Passage or privacy set", PartUse::lockset, 2400},
    {"Deadbolt", PartUse::deadbolt, 3200},
    {"Door stop", PartUse::doorStop, 250},
    {"Closet rod bracket", PartUse::closetRodBracket, 450},
    {"Shelf bracket", PartUse::shelfBracket, 550},
    {"Baluster", PartUse::baluster, 950},
    {"Newel post", PartUse::newel, 11500},
    {"Tread and riser", PartUse::treadKit, 5200},
    {"Arched casing, made to order", PartUse::archCasing, 24000},
};

/// Nails go in pairs about every 16 in, 1.5 for each foot [NAVEDTRA 14044, interior trim].
constexpr int feetForNails(int nails) {
    return nails * 2 / 3;
}

constexpr int caulkFeet = static_cast<int>(feetPerTube(10.1, Length::sixteenths(2)));

struct ConsumableEntry {
    const char* name;
    int cents;
    int feetEach;
    const char* note;
};

constexpr ConsumableEntry consumables[] = {
    {"Finish nails, box of 1,000", 1800, feetForNails(1000), "a pair every 16 in"},
    {"Painter's caulk, 10.1 oz tube", 550, caulkFeet, "one 1/8 in bead along the trim"},
    {"Trim adhesive", 900, 400, "miters and splices; check against your own use"},
    {"Wood filler", 1100, 600, "check against your own use"},
};

struct PieceEntry {
    Task task;
    int cents;
};

constexpr PieceEntry pieces[] = {
    {Task::prehungDoor, 14500},
    {Task::doubleDoor, 25000},
    {Task::bifoldOrBypassDoor, 15000},
    {Task::pocketDoor, 21000},
    {Task::exteriorDoor, 8000},
    {Task::casedOpening, 19500},
    {Task::pictureFrameWindow, 9000},
    {Task::threeSidedWindow, 7000},
    {Task::stoolAndApronWindow, 14500},
    {Task::base, 450},
    {Task::shoe, 200},
    {Task::mediumCrown, 700},
    {Task::largeCrown, 1350},
    {Task::chairRail, 500},
    {Task::shelfAndRod, 1600},
    {Task::closetShelf, 4500},
    {Task::closedSkirt, 24000},
    {Task::railPostToPost, 2400},
    {Task::newel, 21000},
    {Task::baluster, 2400},
    {Task::lockset, 4200},
    {Task::doorStop, 700},
};

} // namespace

void addStarterGoods(PriceBook& book, IdSource& ids) {
    for (const PartEntry& part : parts)
        book.of<Part>().put({ids.next<Part>(), part.name, part.use, Money::cents(part.cents), false,
            Origin::starter});
    for (const ConsumableEntry& each : consumables)
        book.of<Consumable>().put({ids.next<Consumable>(), each.name, Money::cents(each.cents),
            each.feetEach, Origin::starter, each.note});
    for (const PieceEntry& piece : pieces)
        book.of<PiecePrice>().put({ids.next<PiecePrice>(), piece.task, UnitPrice::cents(piece.cents),
            Origin::starter});
}

} // namespace miterbook
