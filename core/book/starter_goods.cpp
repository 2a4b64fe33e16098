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
    {"Passage set", PartUse::passageSet, 2400},
    {"Privacy set", PartUse::privacySet, 2600},
    {"Dummy set", PartUse::dummySet, 1800},
    {"Keyed set", PartUse::keyedSet, 4800},
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

/// About what the starter rates and prices come to with overhead and profit.
constexpr PieceEntry pieces[] = {
    {Task::prehungDoor, 10000},
    {Task::doubleDoor, 17000},
    {Task::bifoldOrBypassDoor, 10500},
    {Task::pocketDoor, 15000},
    {Task::exteriorDoor, 5500},
    {Task::casedOpening, 15000},
    {Task::pictureFrameWindow, 5800},
    {Task::threeSidedWindow, 4500},
    {Task::stoolAndApronWindow, 8500},
    {Task::base, 310},
    {Task::shoe, 150},
    {Task::mediumCrown, 550},
    {Task::largeCrown, 950},
    {Task::chairRail, 425},
    {Task::shelfAndRod, 1400},
    {Task::closetShelf, 4000},
    {Task::closedSkirt, 20000},
    {Task::railPostToPost, 2500},
    {Task::newel, 22500},
    {Task::baluster, 2600},
    {Task::lockset, 4200},
    {Task::deadbolt, 5200},
    {Task::doorStop, 600},
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
        book.of<PiecePrice>().put(
            {ids.next<PiecePrice>(), piece.task, UnitPrice::cents(piece.cents), Origin::starter});
}

} // namespace miterbook
