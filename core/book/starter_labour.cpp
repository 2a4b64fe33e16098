// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/starter_labour.h"

namespace miterbook {

namespace {

struct Rate {
    Task task;
    int hundredths; ///< of a minute, for one unit of the task
    const char* source;
};

/// Ranges are the field's; where the field quotes none for the task itself, the nearest is named.
constexpr Rate rates[] = {
    {Task::prehungDoor, 6000, "common practice, 50-75"},
    {Task::doubleDoor, 11000, "common practice, 90-130"},
    {Task::bifoldOrBypassDoor, 6500, "common practice, 50-80"},
    {Task::pocketDoor, 10000, "common practice, 80-120"},
    {Task::exteriorDoor, 2500, "common practice, 20-30"},
    {Task::casedOpening, 6500, "common practice, 50-80"},
    {Task::pictureFrameWindow, 3200, "common practice, 25-40"},
    {Task::threeSidedWindow, 2000, "common practice, 20"},
    {Task::stoolAndApronWindow, 5000, "common practice, 40-60"},
    {Task::buttedHeadWindow, 4000, "own starter: between picture frame and stool, 25-60"},
    {Task::drywallReturnStool, 2000, "own starter: as a three-sided window, 20"},
    {Task::longSide, 540, "common practice, 5.4"},
    {Task::nonSquareCorner, 1500, "common practice, 15"},
    {Task::mullCasing, 800, "own starter: a quarter of a picture frame, 6-10"},
    {Task::jambExtension, 2500, "common practice, 20-35"},
    {Task::base, 160, "common practice, 1.2-2"},
    {Task::shoe, 80, "common practice, 0.6-1"},
    {Task::smallCrown, 300, "common practice, 3"},
    {Task::mediumCrown, 360, "common practice, 3.6"},
    {Task::largeCrown, 800, "common practice, 7-12"},
    {Task::chairRail, 250, "common practice, 2-3"},
    {Task::shiplap, 500, "common practice, 4-8"},
    {Task::boardAndBatten, 600, "common practice, 4-8"},
    {Task::wainscot, 750, "own starter: the upper part of board and batten, 4-8"},
    {Task::shelfAndRod, 750, "common practice, 6-9"},
    {Task::closetShelf, 1500, "common practice, 12-18"},
    {Task::closedSkirt, 12000, "common practice, 120"},
    {Task::openSkirt, 33000, "common practice, 330"},
    {Task::treadsAndRisers, 21000, "common practice, 150-300 for a flight of 14"},
    {Task::railPostToPost, 900, "common practice, 90 for 10 ft"},
    {Task::railOverPost, 1500, "common practice, 150 for 10 ft"},
    {Task::newel, 6000, "common practice, 45-75"},
    {Task::baluster, 1000, "common practice, 8-12"},
    {Task::halfWallCap, 650, "common practice, 5-8"},
    {Task::atticAccess, 3500, "common practice, 30-45"},
    {Task::mantel, 12000, "common practice, 60-180"},
    {Task::lockset, 1000, "common practice, 8-12"},
    {Task::deadbolt, 1200, "common practice, 12"},
    {Task::doorStop, 300, "common practice, 3"},
    {Task::trip, 12000, "common practice, 60-180"},
    {Task::punch, 6000, "counted in hours, 60"},
    {Task::other, 6000, "counted in hours, 60"},
};

struct Slowing {
    Condition condition;
    int percent;
    const char* source;
};

constexpr Slowing slowings[] = {
    {Condition::stainGrade, 130, "common practice, 130-160"},
    {Condition::hardwood, 130, "common practice, 130"},
    {Condition::nineFootCeiling, 105, "common practice, 105"},
    {Condition::tenFootCeiling, 115, "common practice, 115"},
    {Condition::overTwelveFootCeiling, 150, "common practice, 150"},
    {Condition::upperFloor, 104, "common practice, 103-105"},
    {Condition::radius, 300, "common practice, 300"},
    {Condition::builtUpBase, 300, "common practice, up to 400 for three pieces"},
};

} // namespace

void addStarterLabour(PriceBook& book, IdSource& ids) {
    for (const Rate& rate : rates)
        book.of<LabourRate>().put({ids.next<LabourRate>(), rate.task,
            MinutesPerUnit::hundredths(rate.hundredths), Origin::starter, rate.source});
    for (const Slowing& slowing : slowings)
        book.of<Factor>().put({ids.next<Factor>(), slowing.condition,
            Percent::whole(slowing.percent), Origin::starter, slowing.source});
}

} // namespace miterbook
