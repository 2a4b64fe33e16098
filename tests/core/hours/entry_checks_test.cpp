// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/time_kit.h"

#include "hours/done_units.h"
#include "hours/entry_checks.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

TimeEntry sound() {
    return timeAt(0, lena, PieceOfWork::doors, Hours::whole(8), Quantity::count(6));
}

std::string refusal(const TimeEntry& entry) {
    const auto checked = checkEntry(entry, weekday(5));
    return checked ? std::string() : checked.error().sentence;
}

const PersonNames names{{lena, "Lena"}, {omar, "Omar"}};

} // namespace

TEST(CheckEntry, RefusesWhatCannotBe) {
    EXPECT_EQ(refusal(sound()), "");
    TimeEntry entry = sound();
    entry.date = noDate;
    EXPECT_EQ(refusal(entry), "The time has no date.");
    entry = sound();
    entry.date = weekday(6);
    EXPECT_EQ(refusal(entry), "The time is dated 2026-03-08, which is yet to come.");
    entry = sound();
    entry.person = {};
    EXPECT_EQ(refusal(entry), "The time of 2026-03-02 says nobody's name.");
    entry = sound();
    entry.time = {};
    EXPECT_EQ(refusal(entry), "The time of 2026-03-02 must be more than no hours.");
    entry.time = Hours::whole(80);
    EXPECT_EQ(refusal(entry), "80.0 hours do not fit into one day, 2026-03-02.");
    entry = sound();
    entry.done = Quantity::count(-1);
    EXPECT_EQ(refusal(entry), "Fewer than none cannot have been finished on 2026-03-02.");
}

TEST(Doubts, AreSaidOfLongDaysAndTwins) {
    std::vector<TimeEntry> entries{sound(), timeAt(0, omar, PieceOfWork::base, Hours::whole(9))};
    EXPECT_TRUE(doubtsAbout(entries, names).empty());
    entries.push_back(sound());
    auto doubts = doubtsAbout(entries, names);
    ASSERT_EQ(doubts.size(), 1U);
    EXPECT_EQ(doubts[0].entry, entries[2].id);
    EXPECT_EQ(doubts[0].sentence, "Lena has the same 8.0 hours twice on 2026-03-02.");
    entries.push_back(timeAt(0, lena, PieceOfWork::base, Hours::minutes(30)));
    doubts = doubtsAbout(entries, names);
    ASSERT_EQ(doubts.size(), 2U);
    EXPECT_EQ(doubts[1].sentence, "Lena has more than 16 hours on 2026-03-02.");
}

TEST(DoneUnits, FollowTheTaskWhereOneIsSaid) {
    TimeEntry entry = sound();
    EXPECT_EQ(doneUnit(entry), Unit::each);
    entry.work = PieceOfWork::base;
    EXPECT_EQ(doneUnit(entry), Unit::linearFoot);
    entry.work = PieceOfWork::closets;
    entry.task = Task::closetShelf;
    EXPECT_EQ(doneUnit(entry), Unit::each);
}

TEST(DoneUnits, CountOpeningsNotTheirParts) {
    EXPECT_TRUE(countsAsDone(Task::pictureFrameWindow));
    EXPECT_FALSE(countsAsDone(Task::jambExtension));
    EXPECT_FALSE(countsAsDone(Task::nonSquareCorner));
    EXPECT_TRUE(countsAsDone(Task::base));
    EXPECT_FALSE(countsAsDone(Task::shoe));
    EXPECT_TRUE(countsAsDone(Task::treadsAndRisers));
    EXPECT_FALSE(countsAsDone(Task::baluster));
}

TEST(BidWork, IsWhatTheTimeIsHeldAgainst) {
    TimeEntry entry = sound();
    EXPECT_EQ(bidWorkOf(entry), PieceOfWork::doors);
    entry.kind = TimeKind::travel;
    EXPECT_EQ(bidWorkOf(entry), PieceOfWork::trips);
    entry.kind = TimeKind::punch;
    EXPECT_EQ(bidWorkOf(entry), PieceOfWork::punch);
    entry.kind = TimeKind::waiting;
    EXPECT_EQ(bidWorkOf(entry), std::nullopt);
    entry.kind = TimeKind::callback;
    EXPECT_EQ(bidWorkOf(entry), std::nullopt);
}
