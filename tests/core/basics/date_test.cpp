// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/clock.h"
#include "basics/date.h"

#include <gtest/gtest.h>

namespace miterbook {

namespace {

using std::chrono::day;
using std::chrono::month;
using std::chrono::year;

constexpr Date november25{year(2026), month(11), day(25)};

TEST(Date, ReadsAndWritesIso) {
    EXPECT_EQ(*parseIsoDate("2026-11-25"), november25);
    EXPECT_EQ(isoDate(november25), "2026-11-25");
    EXPECT_EQ(isoDate({year(987), month(1), day(2)}), "0987-01-02");
}

TEST(Date, EmptyTextIsNoDate) {
    EXPECT_EQ(*parseIsoDate(""), noDate);
    EXPECT_EQ(isoDate(noDate), "");
    EXPECT_EQ(formatDate(noDate, true), "");
    EXPECT_FALSE(noDate.ok());
}

TEST(Date, RefusesWhatIsOnNoCalendar) {
    for (const char* text :
        {"2026-02-29", "2026-13-01", "2026-00-10", "2026-11-31", "26-11-25", "2026/11/25",
            "2026-11-2", "2026--1-05", "2026-11-25 ", "tomorrow", "-026-11-25", "0000-01-01"})
        EXPECT_FALSE(parseIsoDate(text).ok()) << text;
    EXPECT_TRUE(parseIsoDate("2028-02-29").ok()); // a leap year
    EXPECT_EQ(
        parseIsoDate("soon").error().sentence, "\"soon\" is not a date; write it as 2026-11-25.");
}

TEST(Date, IsWrittenInTheOrderOfTheCountry) {
    EXPECT_EQ(formatDate(november25, true), "11/25/2026");
    EXPECT_EQ(formatDate(november25, false), "25 Nov 2026");
    EXPECT_EQ(formatDate({year(2027), month(1), day(2)}, true), "1/2/2027");
}

TEST(Date, AddsDaysOverMonthsAndYears) {
    EXPECT_EQ(isoDate(addDays(november25, 30)), "2026-12-25");
    EXPECT_EQ(isoDate(addDays(november25, 37)), "2027-01-01");
    EXPECT_EQ(isoDate(addDays(*parseIsoDate("2028-03-01"), -1)), "2028-02-29");
    EXPECT_EQ(addDays(noDate, 5), noDate);
}

TEST(Clock, AFixedOneStandsStill) {
    const FixedClock clock(november25);
    EXPECT_EQ(clock.today(), november25);
    EXPECT_EQ(clock.timestamp(), "2026-11-25T12:00:00Z");
}

TEST(Clock, TheMachinesGivesARealDayAndAnIsoStamp) {
    const SystemClock clock;
    EXPECT_TRUE(clock.today().ok());
    const std::string stamp = clock.timestamp();
    ASSERT_EQ(stamp.size(), 20U);
    EXPECT_TRUE(parseIsoDate(stamp.substr(0, 10)).ok()) << stamp;
    EXPECT_EQ(stamp[10], 'T');
    EXPECT_EQ(stamp.back(), 'Z');
}

} // namespace

} // namespace miterbook
