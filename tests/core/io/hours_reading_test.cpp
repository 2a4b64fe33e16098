// SPDX-License-Identifier: GPL-3.0-or-later
// A phone's notes as CSV, read into time entries.
#include "io/hours_reading.h"

#include "core/io/book_fixture.h"
#include "io/hours_words.h"

#include <gmock/gmock.h>

using namespace miterbook;
using testing::ElementsAre;

namespace {

constexpr Date today{std::chrono::year(2026), std::chrono::March, std::chrono::day(9)};

/// Three of the crew, two of them Sam; four houses.
class HoursFile : public testing::Test, public BookFixture {
protected:
    HoursFile() {
        lena = person("Lena Ortiz");
        person("Sam Reed");
        person("Sam Vale");
        lot12 = addHouse("Creekside 12", "12", HouseStage::underway);
        addHouse("Alder 12", "12", HouseStage::paid);
        addHouse("Creekside 13", "13", HouseStage::underway);
        addHouse("Alder 13", "13", HouseStage::underway);
    }

    HoursReading read(const std::string& rows, const std::vector<TimeEntry>& entries = {}) {
        const auto reading = readHours(
            "Date,Who,Lot,What,Hours,Units done,Notes\n" + rows, book, entries, today);
        EXPECT_TRUE(reading);
        return reading.valueOr({});
    }
    /// The sentence about a file with this one row.
    std::string refusal(const std::string& row) {
        const HoursReading reading = read(row);
        return reading.rejected.empty() ? std::string()
                                        : HoursReading::sentence(reading.rejected.front());
    }

    Id<CrewMember> lena;
    Id<House> lot12;

private:
    Id<CrewMember> person(const std::string& name) {
        const Id<CrewMember> id = ids.next<CrewMember>();
        book.prices.of<CrewMember>().put({id, name, Money::dollars(30), true});
        return id;
    }
    Id<House> addHouse(const std::string& name, const std::string& lot, HouseStage stage) {
        House house;
        house.id = ids.next<House>();
        house.name = name;
        house.lot = lot;
        house.stage = stage;
        const Id<House> id = house.id;
        book.jobs.of<House>().put(std::move(house));
        return id;
    }
};

} // namespace

TEST_F(HoursFile, GivesEntries) {
    const HoursReading reading = read("3/4,lena,lot 12,Doors,7.5,6,\"jambs, again\"\n"
                                      "2026-03-05,Sam Reed,Creekside 13,pocket door,2:30,1,\n"
                                      "3/6,Lena Ortiz,,travel,45 min,,\n");
    EXPECT_THAT(reading.rejected, ElementsAre());
    ASSERT_EQ(reading.rows.size(), 3U);
    const TimeEntry& first = reading.rows[0];
    EXPECT_EQ(isoDate(first.date), "2026-03-04");
    EXPECT_EQ(first.person, lena);
    EXPECT_EQ(first.house, lot12) << "underway before paid";
    EXPECT_EQ(first.work, PieceOfWork::doors);
    EXPECT_EQ(first.time, Hours::minutes(450));
    EXPECT_EQ(first.done, Quantity::count(6));
    EXPECT_EQ(first.note, "jambs, again");
    EXPECT_EQ(reading.rows[1].task, Task::pocketDoor);
    EXPECT_EQ(reading.rows[1].time, Hours::minutes(150));
    EXPECT_EQ(reading.rows[2].kind, TimeKind::travel);
    EXPECT_EQ(reading.rows[2].work, PieceOfWork::trips);
    EXPECT_EQ(reading.rows[2].house, Id<House>());
}

TEST_F(HoursFile, SaysWhyARowIsTurnedAway) {
    EXPECT_EQ(refusal("soon,Lena,12,doors,8,,"),
        "line 2, Date: \"soon\" is not a date; write it as 2026-11-25.");
    EXPECT_EQ(refusal("2026-03-10,Lena,12,doors,8,,"),
        "line 2, Date: The time is dated 2026-03-10, which is yet to come.");
    EXPECT_EQ(refusal("3/4,Kim,12,doors,8,,"), "line 2, Who: There is no \"Kim\" in the crew.");
    EXPECT_EQ(refusal("3/4,Sam,12,doors,8,,"),
        "line 2, Who: More than one of the crew is called \"Sam\".");
    EXPECT_EQ(
        refusal("3/4,Lena,99,doors,8,,"), "line 2, Lot: There is no house \"99\" in the book.");
    EXPECT_EQ(refusal("3/4,Lena,13,doors,8,,"),
        "line 2, Lot: More than one house is called \"13\"; use its name.");
    EXPECT_EQ(refusal("3/4,Lena,12,painting,8,,"),
        "line 2, What: \"painting\" is no piece of work, task or kind of time.");
    EXPECT_EQ(refusal("3/4,Lena,12,doors,80,,"),
        "line 2, Hours: 80.0 hours do not fit into one day, 2026-03-04.");
    EXPECT_NE(refusal("3/4,Lena,12,doors,long,,"), "");
    EXPECT_NE(refusal("3/4,Lena,12,doors,8,-2,"), "");
}

TEST_F(HoursFile, ReadsGoodRowsBesideBadOnes) {
    const HoursReading reading = read("3/4,Kim,99,doors,8,,\n3/4,Lena,12,doors,8,,\n");
    EXPECT_EQ(reading.rows.size(), 1U);
    EXPECT_EQ(reading.rejected.size(), 2U);
    EXPECT_EQ(reading.rejectedRows(), 1);
}

TEST_F(HoursFile, BringsNothingInTwice) {
    const std::string rows = "3/4,Lena,12,doors,4,,\n3/4,Lena,12,doors,4,,\n";
    std::vector<TimeEntry> there = read(rows).rows;
    ASSERT_EQ(there.size(), 2U) << "the same twice in one file is two";
    for (TimeEntry& entry : there)
        entry.id = ids.next<TimeEntry>();
    const HoursReading again = read(rows + "3/5,Lena,12,doors,4,,\n", there);
    EXPECT_EQ(again.known.size(), 2U);
    EXPECT_EQ(again.rows.size(), 1U);
}

TEST_F(HoursFile, NamesWhatItLacks) {
    const auto reading = readHours("Date,Lot,Hours,Mood\n3/4,12,8,fine\n", book, {}, today);
    ASSERT_FALSE(reading);
    EXPECT_EQ(reading.error().sentence, "The file has no column for who, what.");
    EXPECT_THAT(
        readHours("Day,Person,What,Hrs,Mood\n", book, {}, today)->unmapped, ElementsAre("Mood"));
    EXPECT_FALSE(readHours("", book, {}, today));
}

TEST_F(HoursFile, TakesTaskAndKindFromColumnsOfTheirOwn) {
    const auto reading = readHours("date,who,house,what,task,kind,hours\n"
                                   "3/4,Lena,12,doors,pocket door,,2\n"
                                   "3/4,Lena,12,doors,,callback,1\n"
                                   "3/4,Lena,12,doors,\"base, one piece\",,1\n",
        book, {}, today);
    ASSERT_TRUE(reading);
    ASSERT_EQ(reading->rows.size(), 2U);
    EXPECT_EQ(reading->rows[0].task, Task::pocketDoor);
    EXPECT_EQ(reading->rows[1].kind, TimeKind::callback);
    EXPECT_EQ(reading->rows[1].work, PieceOfWork::doors);
    EXPECT_EQ(HoursReading::sentence(reading->rejected.front()),
        "line 4, task: That task is no part of doors.");
}

TEST(HoursWords, KnowWhatPeopleWrite) {
    EXPECT_EQ(workCalled("Baseboard")->work, PieceOfWork::base);
    EXPECT_EQ(workCalled("Built-ins")->work, PieceOfWork::builtIns);
    EXPECT_EQ(workCalled("driving")->kind, TimeKind::travel);
    EXPECT_EQ(workCalled("punch")->work, PieceOfWork::punch);
    EXPECT_EQ(workCalled("punch")->kind, TimeKind::punch);
    EXPECT_EQ(workCalled("call-back")->kind, TimeKind::callback);
    EXPECT_FALSE(workCalled("work")) << "says nothing";
    EXPECT_EQ(hoursColumnCalled("Hours (h)"), HoursColumn::hours);
    EXPECT_EQ(hoursColumnCalled("Piece of work"), HoursColumn::what);
    EXPECT_EQ(hoursColumnCalled("weather"), std::nullopt);
}
