// SPDX-License-Identifier: GPL-3.0-or-later
#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;
using testing::ElementsAre;
using testing::IsEmpty;

Task mainTask(OpeningKind kind) {
    Opening opening = door(ft(2, 8));
    opening.kind = kind;
    return takeOne(opening).tasks.at(0).task;
}

TEST(MainTask, FollowsTheKindOfDoor) {
    EXPECT_EQ(mainTask(OpeningKind::prehungDoor), Task::prehungDoor);
    EXPECT_EQ(mainTask(OpeningKind::doubleDoor), Task::doubleDoor);
    EXPECT_EQ(mainTask(OpeningKind::bifoldDoor), Task::bifoldOrBypassDoor);
    EXPECT_EQ(mainTask(OpeningKind::bypassDoor), Task::bifoldOrBypassDoor);
    EXPECT_EQ(mainTask(OpeningKind::pocketDoor), Task::pocketDoor);
    EXPECT_EQ(mainTask(OpeningKind::exteriorDoor), Task::exteriorDoor);
    EXPECT_EQ(mainTask(OpeningKind::casedOpening), Task::casedOpening);
}

TEST(MainTask, FollowsTheStyleOfAWindow) {
    const auto task
        = [](TrimStyle style) { return takeOne(window(in(36), in(40), style)).tasks.at(0).task; };
    EXPECT_EQ(task(TrimStyle::pictureFrame), Task::pictureFrameWindow);
    EXPECT_EQ(task(TrimStyle::stoolAndApron), Task::stoolAndApronWindow);
    EXPECT_EQ(task(TrimStyle::threeSided), Task::threeSidedWindow);
    EXPECT_EQ(task(TrimStyle::buttedHead), Task::buttedHeadWindow);
}

TEST(MainTask, CountsADoorOnceWhateverItsSides) {
    Opening opening = door(ft(2, 8));
    opening.count = 3;
    const TaskCount both = takeOne(opening).tasks.at(0);
    EXPECT_EQ(both.quantity, Quantity::count(3));
    EXPECT_EQ(both.what, "cased both sides");
    opening.sidesCased = 1;
    EXPECT_EQ(takeOne(opening).tasks.at(0).quantity, Quantity::count(3));
    opening.sidesCased = 0;
    EXPECT_EQ(takeOne(opening).tasks.at(0).what, "not cased");
}

TEST(Conditions, ComeFromTheProfile) {
    Opening opening = window(in(36), in(40));
    EXPECT_TRUE(takeOne(opening).tasks.at(0).conditions.empty());
    opening.casing = profiles.oakCasing;
    const Conditions conditions = takeOne(opening).tasks.at(0).conditions;
    EXPECT_TRUE(conditions.has(Condition::stainGrade));
    EXPECT_TRUE(conditions.has(Condition::hardwood));
    EXPECT_FALSE(conditions.has(Condition::upperFloor));
}

Conditions inLevel(Length levelCeiling, Length roomCeiling, bool upper = false) {
    WholePlan whole = emptyPlan();
    whole.levels[0].ceiling = levelCeiling;
    whole.levels[0].upper = upper;
    Room den = room({});
    den.ceiling = roomCeiling;
    whole.rooms.push_back(den);
    Opening opening = window(in(36), in(40));
    opening.room = den.id;
    opening.level = {};
    whole.openings.push_back(opening);
    return takeOff(whole, littleBook(), 0).tasks.at(0).conditions;
}

Conditions only(Condition condition) {
    Conditions conditions;
    conditions.add(condition);
    return conditions;
}

TEST(Conditions, TakeTheOneCeilingThatApplies) {
    EXPECT_EQ(inLevel(ft(8), {}), Conditions());
    EXPECT_EQ(inLevel(ft(8, 11), {}), Conditions());
    EXPECT_EQ(inLevel(ft(9), {}), only(Condition::nineFootCeiling));
    EXPECT_EQ(inLevel(ft(9, 11), {}), only(Condition::nineFootCeiling));
    EXPECT_EQ(inLevel(ft(10), {}), only(Condition::tenFootCeiling));
    EXPECT_EQ(inLevel(ft(12), {}), only(Condition::tenFootCeiling));
    EXPECT_EQ(inLevel(ft(12, 1), {}), only(Condition::overTwelveFootCeiling));
}

TEST(Conditions, TakeTheRoomsCeilingBeforeTheLevels) {
    EXPECT_EQ(inLevel(ft(8), ft(18)), only(Condition::overTwelveFootCeiling));
    EXPECT_EQ(inLevel(ft(10), ft(8)), Conditions());
}

TEST(Conditions, KnowTheUpperFloorThroughTheRoom) {
    EXPECT_EQ(inLevel(ft(8), {}, true), only(Condition::upperFloor));
}

TEST(Hardware, IsCountedAsGoodsAndAsFitting) {
    Opening opening = door(ft(2, 8));
    opening.count = 2;
    opening.lockset = Lockset::keyed;
    opening.deadbolt = true;
    opening.doorStop = true;
    opening.casing = profiles.oakCasing;
    const Takeoff takeoff = takeOne(opening);
    EXPECT_EQ(parts(takeoff, PartUse::keyedSet), 2);
    EXPECT_EQ(parts(takeoff, PartUse::passageSet), 0);
    EXPECT_EQ(parts(takeoff, PartUse::deadbolt), 2);
    EXPECT_EQ(parts(takeoff, PartUse::doorStop), 2);
    EXPECT_EQ(amount(takeoff, Task::lockset), 2000);
    EXPECT_EQ(amount(takeoff, Task::deadbolt), 2000);
    EXPECT_EQ(amount(takeoff, Task::doorStop), 2000);
    for (const TaskCount& task : takeoff.tasks) {
        if (task.work == PieceOfWork::hardware) {
            EXPECT_TRUE(task.conditions.empty()) << "stain grade casing slows no lockset";
        }
    }
}

TEST(Hardware, IsNoneOnWindowsAndCasedOpenings) {
    Opening opening = door(ft(2, 8));
    opening.kind = OpeningKind::casedOpening;
    opening.lockset = Lockset::passage;
    EXPECT_THAT(takeOne(opening).parts, IsEmpty());
    opening.kind = OpeningKind::prehungDoor;
    opening.lockset = Lockset::none;
    EXPECT_THAT(takeOne(opening).parts, IsEmpty());
}

TEST(Trips, AreThePlansOwn) {
    const Takeoff takeoff = takeOff(emptyPlan(), littleBook(), 3);
    EXPECT_EQ(amount(takeoff, Task::trip), 3000);
    EXPECT_EQ(takeoff.tasks.at(0).source.row, Origins(Id<Plan>(1)));
    EXPECT_EQ(takeoff.tasks.at(0).source.name, "Test");
    EXPECT_THAT(takeOff(emptyPlan(), littleBook(), 0).tasks, IsEmpty());
}

TEST(Profiles, MissingOnesAreProblemsAndTheLabourStays) {
    WholePlan whole = emptyPlan();
    whole.plan.windowCasing = {};
    whole.openings.push_back(window(in(36), in(40)));
    const Takeoff takeoff = takeOff(whole, littleBook(), 0);
    EXPECT_THAT(takeoff.pieces, IsEmpty());
    EXPECT_THAT(
        problems(takeoff), ElementsAre("W1 has no profile for its casing; that is not counted."));
    EXPECT_EQ(amount(takeoff, Task::pictureFrameWindow), 1000);
}

TEST(Profiles, GoneFromTheBookAreProblems) {
    Opening opening = window(in(36), in(40));
    opening.casing = Id<Profile>(99);
    EXPECT_THAT(problems(takeOne(opening)),
        ElementsAre(
            "W1: the profile of its casing is no longer in the book; that is not counted."));
}

TEST(Profiles, WithoutAStickAreSaidOnceAndStillCounted) {
    WholePlan whole = emptyPlan();
    whole.plan.windowCasing = profiles.noStick;
    whole.openings.assign(3, window(in(36), in(40)));
    const Takeoff takeoff = takeOff(whole, littleBook(), 0);
    EXPECT_EQ(takeoff.pieces.size(), 12U);
    EXPECT_THAT(problems(takeoff),
        ElementsAre("No stick of profile 11 is stocked (casing of W1 and others)."));
}

TEST(Openings, WithoutASizeAreProblems) {
    EXPECT_THAT(problems(takeOne(window({}, in(60)))),
        ElementsAre("W1 has no size; its trim is not counted."));
    EXPECT_THAT(problems(takeOne(window(in(60), {}))),
        ElementsAre("W1 has no size; its trim is not counted."));
}

TEST(Remarks, OfTheWholePlanAreCarriedAlong) {
    WholePlan whole = emptyPlan();
    whole.remarks = {"Two options change W1."};
    EXPECT_THAT(warnings(takeOff(whole, littleBook(), 0)), ElementsAre("Two options change W1."));
}

} // namespace
} // namespace miterbook
