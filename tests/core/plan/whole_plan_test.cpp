// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/whole_plan.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr Id<Variant> elevationB{50};
constexpr Id<Variant> optionC{51};
constexpr Id<Variant> optionD{52};

/// A plan with one level, two rooms, two windows; three variants with nothing in them yet.
struct Sheet {
    Plan plan;
    PlanRows rows;

    Sheet() {
        plan.id = Id<Plan>(1);
        plan.name = "Alder";
        variant(elevationB, VariantKind::elevation, "B");
        variant(optionC, VariantKind::option, "C");
        variant(optionD, VariantKind::option, "D");
        Level level;
        level.id = Id<Level>(10);
        level.name = "Main";
        put(level);
        put(room(20, "Den"));
        put(room(21, "Hall"));
        put(window(30, "W1", 36));
        put(window(31, "W2", 48));
    }

    template <class Row>
    void put(Row row) {
        row.plan = plan.id;
        rows.of<Row>().put(row);
    }

    void variant(Id<Variant> id, VariantKind kind, std::string name) {
        Variant row;
        row.id = id;
        row.kind = kind;
        row.name = std::move(name);
        put(row);
    }

    static Room room(int id, std::string name) {
        Room row;
        row.id = Id<Room>(id);
        row.level = Id<Level>(10);
        row.name = std::move(name);
        row.position = id;
        return row;
    }

    static Opening window(int id, std::string mark, int width) {
        Opening row;
        row.id = Id<Opening>(id);
        row.level = Id<Level>(10);
        row.room = Id<Room>(20);
        row.mark = std::move(mark);
        row.width = Length::inches(width);
        row.position = id;
        return row;
    }

    /// A change of W1's width in a variant.
    void changeW1(int id, Id<Variant> by, int width) {
        Opening row = window(id, "W1", width);
        row.position = 30;
        row.variant = by;
        row.replaces = Id<Opening>(30);
        put(row);
    }

    void removeW1(int id, Id<Variant> by) {
        Opening row = window(id, "W1", 36);
        row.variant = by;
        row.replaces = Id<Opening>(30);
        row.removed = true;
        put(row);
    }

    WholePlan whole(Selection selection = {}) const { return wholePlan(plan, rows, selection); }
};

std::vector<std::string> marks(const WholePlan& whole) {
    std::vector<std::string> list;
    for (const Opening& opening : whole.openings)
        list.push_back(opening.mark);
    return list;
}

TEST(WholePlan, OfNothingSelectedIsTheBasePlan) {
    Sheet sheet;
    const WholePlan base = sheet.whole();
    sheet.changeW1(60, optionC, 99);
    Opening added = Sheet::window(61, "W9", 24);
    added.variant = optionC;
    sheet.put(added);
    EXPECT_EQ(sheet.whole(), base);
    ASSERT_EQ(base.openings.size(), 2U);
    EXPECT_EQ(base.openings[0], *sheet.rows.of<Opening>().find(Id<Opening>(30)));
    EXPECT_EQ(base.plan, sheet.plan);
    EXPECT_THAT(base.remarks, IsEmpty());
}

TEST(WholePlan, OfAnEmptyVariantIsTheBasePlan) {
    const Sheet sheet;
    EXPECT_EQ(sheet.whole({elevationB, {optionC, optionD}}), sheet.whole());
}

TEST(WholePlan, ChangedRowKeepsTheIdOfTheRowItReplaces) {
    Sheet sheet;
    sheet.changeW1(60, optionC, 99);
    const WholePlan whole = sheet.whole({{}, {optionC}});
    EXPECT_THAT(marks(whole), ElementsAre("W1", "W2"));
    EXPECT_EQ(whole.openings[0].id, Id<Opening>(30));
    EXPECT_EQ(whole.openings[0].width, Length::inches(99));
    EXPECT_FALSE(whole.openings[0].variant);
    EXPECT_FALSE(whole.openings[0].replaces);
    EXPECT_THAT(whole.remarks, IsEmpty());
}

TEST(WholePlan, RemovedRowIsGone) {
    Sheet sheet;
    sheet.removeW1(60, optionC);
    EXPECT_THAT(marks(sheet.whole({{}, {optionC}})), ElementsAre("W2"));
    EXPECT_THAT(marks(sheet.whole({{}, {optionD}})), ElementsAre("W1", "W2"));
}

TEST(WholePlan, AddedRowKeepsItsIdAndStandsWhereItsPositionSays) {
    Sheet sheet;
    Opening added = Sheet::window(61, "W1A", 24);
    added.variant = optionC;
    added.position = 30; // beside W1, which was made before it
    sheet.put(added);
    const WholePlan whole = sheet.whole({{}, {optionC}});
    EXPECT_THAT(marks(whole), ElementsAre("W1", "W1A", "W2"));
    EXPECT_EQ(whole.openings[1].id, Id<Opening>(61));
}

TEST(WholePlan, LaterVariantWinsAndARemarkSaysSo) {
    Sheet sheet;
    sheet.changeW1(60, elevationB, 40);
    sheet.changeW1(61, optionC, 50);
    const WholePlan whole = sheet.whole({elevationB, {optionC}});
    EXPECT_EQ(whole.openings[0].width, Length::inches(50));
    EXPECT_THAT(
        whole.remarks, ElementsAre("Elevation B and option C both change opening W1; C is used."));
}

TEST(WholePlan, TheOrderOfTheSelectionDecides) {
    Sheet sheet;
    sheet.changeW1(60, optionC, 40);
    sheet.changeW1(61, optionD, 50);
    EXPECT_EQ(sheet.whole({{}, {optionC, optionD}}).openings[0].width, Length::inches(50));
    EXPECT_EQ(sheet.whole({{}, {optionD, optionC}}).openings[0].width, Length::inches(40));
}

TEST(WholePlan, TwoThatRemoveTheSameRowAgree) {
    Sheet sheet;
    sheet.removeW1(60, optionC);
    sheet.removeW1(61, optionD);
    const WholePlan whole = sheet.whole({{}, {optionC, optionD}});
    EXPECT_THAT(marks(whole), ElementsAre("W2"));
    EXPECT_THAT(whole.remarks, IsEmpty());
}

TEST(WholePlan, ChangeAfterRemovalBringsTheRowBackWithARemark) {
    Sheet sheet;
    sheet.removeW1(60, optionC);
    sheet.changeW1(61, optionD, 50);
    const WholePlan whole = sheet.whole({{}, {optionC, optionD}});
    EXPECT_THAT(marks(whole), ElementsAre("W1", "W2"));
    EXPECT_EQ(whole.remarks.size(), 1U);
}

TEST(WholePlan, ChangeOfARowThatOnlyAnotherVariantHasIsRemarked) {
    Sheet sheet;
    Opening added = Sheet::window(61, "W9", 24);
    added.variant = optionC;
    sheet.put(added);
    Opening change = Sheet::window(62, "W9", 30);
    change.variant = optionD;
    change.replaces = added.id;
    sheet.put(change);
    EXPECT_THAT(sheet.whole({{}, {optionD}}).remarks,
        ElementsAre(
            "Option D changes opening W9, which is not in the plan without another option."));
    const WholePlan both = sheet.whole({{}, {optionC, optionD}});
    EXPECT_EQ(both.openings.back().id, added.id);
    EXPECT_EQ(both.openings.back().width, Length::inches(30));
}

TEST(WholePlan, StrangersInTheSelectionAreLeftOutWithARemark) {
    Sheet sheet;
    Variant foreign;
    foreign.id = Id<Variant>(70);
    foreign.plan = Id<Plan>(2);
    foreign.name = "Foreign";
    sheet.rows.of<Variant>().put(foreign);
    const WholePlan whole = sheet.whole({Id<Variant>(99), {foreign.id, optionC, optionC}});
    EXPECT_THAT(whole.remarks,
        ElementsAre("A chosen elevation or option is not one of plan Alder; it is left out.",
            "A chosen elevation or option is not one of plan Alder; it is left out."));
    EXPECT_EQ(whole.openings, sheet.whole().openings);
}

TEST(WholePlan, ReferencesToAChangedRoomStillHold) {
    Sheet sheet;
    Room bigger = Sheet::room(63, "Den");
    bigger.variant = optionC;
    bigger.replaces = Id<Room>(20);
    sheet.put(bigger);
    Opening added = Sheet::window(64, "W9", 24);
    added.variant = optionC;
    added.room = bigger.id; // named by the changing row's own id
    sheet.put(added);
    const WholePlan whole = sheet.whole({{}, {optionC}});
    for (const Opening& opening : whole.openings) {
        ASSERT_NE(whole.room(opening.room), nullptr) << opening.mark;
        EXPECT_EQ(opening.room, Id<Room>(20));
    }
    EXPECT_THAT(whole.remarks, IsEmpty());
}

TEST(WholePlan, ReferencesToARemovedRoomBecomeNoneWithARemark) {
    Sheet sheet;
    Room gone = Sheet::room(63, "Den");
    gone.variant = optionC;
    gone.replaces = Id<Room>(20);
    gone.removed = true;
    sheet.put(gone);
    const WholePlan whole = sheet.whole({{}, {optionC}});
    EXPECT_FALSE(whole.openings.at(0).room);
    EXPECT_THAT(whole.remarks,
        ElementsAre("The room of opening W1 is taken away, but not the opening.",
            "The room of opening W2 is taken away, but not the opening."));
}

TEST(WholePlan, ReversedFlipsHandsAndTwiceIsBack) {
    Sheet sheet;
    for (const auto& [id, name] : {std::pair(optionC, "C"), std::pair(optionD, "D")}) {
        Variant row;
        row.id = id;
        row.name = name;
        row.reversed = true;
        sheet.put(row);
    }
    Opening left = Sheet::window(30, "W1", 36);
    left.hand = Hand::left;
    sheet.put(left);
    Opening right = Sheet::window(31, "W2", 48);
    right.hand = Hand::right;
    sheet.put(right);
    sheet.put(Sheet::window(32, "W3", 48));
    const auto hands = [&](Selection selection) {
        std::vector<Hand> list;
        for (const Opening& opening : sheet.whole(selection).openings)
            list.push_back(opening.hand);
        return list;
    };
    EXPECT_THAT(hands({}), ElementsAre(Hand::left, Hand::right, Hand::none));
    EXPECT_THAT(hands({{}, {optionC}}), ElementsAre(Hand::right, Hand::left, Hand::none));
    EXPECT_THAT(hands({{}, {optionC, optionD}}), ElementsAre(Hand::left, Hand::right, Hand::none));
}

TEST(OnlyLevel, KeepsWhatStandsOnItThroughItsRoomToo) {
    Sheet sheet;
    Level upper;
    upper.id = Id<Level>(11);
    sheet.put(upper);
    Room bed = Sheet::room(22, "Bed");
    bed.level = upper.id;
    sheet.put(bed);
    Opening above = Sheet::window(33, "W3", 36);
    above.level = {};
    above.room = bed.id;
    sheet.put(above);
    Stair stair;
    stair.id = Id<Stair>(40);
    sheet.put(stair);
    const WholePlan part = onlyLevel(sheet.whole(), upper.id);
    EXPECT_EQ(part.levels.size(), 1U);
    EXPECT_EQ(part.rooms.size(), 1U);
    EXPECT_THAT(marks(part), ElementsAre("W3"));
    EXPECT_THAT(part.stairs, IsEmpty());
    EXPECT_THAT(marks(onlyLevel(sheet.whole(), Id<Level>(10))), ElementsAre("W1", "W2"));
}

TEST(WholePlan, FindsRowsById) {
    const WholePlan whole = Sheet().whole();
    ASSERT_NE(whole.room(Id<Room>(21)), nullptr);
    EXPECT_EQ(whole.room(Id<Room>(21))->name, "Hall");
    EXPECT_EQ(whole.room(Id<Room>(99)), nullptr);
    ASSERT_NE(whole.level(Id<Level>(10)), nullptr);
    EXPECT_EQ(whole.level({}), nullptr);
}

} // namespace
} // namespace miterbook
