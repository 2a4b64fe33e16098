// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/typed_date.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

constexpr Date today{std::chrono::year(2026), std::chrono::March, std::chrono::day(9)};

std::string read(std::string_view text, bool monthFirst = true) {
    return isoDate(parseTypedDate(text, monthFirst, today).valueOr(noDate));
}

std::string near(std::string_view text, Date day = today) {
    return isoDate(parseNearDate(text, true, day).valueOr(noDate));
}

} // namespace

TEST(TypedDate, IsReadAsPeopleWriteIt) {
    EXPECT_EQ(read("2026-03-04"), "2026-03-04");
    EXPECT_EQ(read("3/4/2026"), "2026-03-04");
    EXPECT_EQ(read(" 03/04/26 "), "2026-03-04");
    EXPECT_EQ(read("3-4-2026"), "2026-03-04");
    EXPECT_EQ(read("4 Mar 2026"), "2026-03-04");
    EXPECT_EQ(read("March 4, 2026"), "2026-03-04");
    EXPECT_EQ(read("sept 30 2025"), "2025-09-30");
}

TEST(TypedDate, PutsTheDayFirstWhereTheShopDoes) {
    EXPECT_EQ(read("3/4/2026", false), "2026-04-03");
    EXPECT_EQ(read("3.4.2026", true), "2026-04-03") << "points are always day first";
    EXPECT_EQ(read("13/4/2026", true), "") << "no thirteenth month";
}

TEST(TypedDate, WithoutAYearIsTheLastSuchDay) {
    EXPECT_EQ(read("3/9"), "2026-03-09");
    EXPECT_EQ(read("3/10"), "2025-03-10");
    EXPECT_EQ(read("24 Dec"), "2025-12-24");
    EXPECT_EQ(read("2/29"), "") << "neither year has one";
}

TEST(TypedDate, RefusesWhatIsNone) {
    for (const char* bad :
        {"", "today", "3", "3/4/2026/1", "2026-02-30", "32 Mar 2026", "Ma 4", "Mar Apr 2026",
            "3/4/1850", "99999/1/1", "4th", "-", "268/5/2026", "3/260/2026", "Nov 2050"})
        EXPECT_EQ(read(bad), "") << bad;
    EXPECT_EQ(parseTypedDate("4th", true, today).error().sentence,
        "\"4th\" is not a date; write it as 2026-11-25.");
}

TEST(NearDate, WithoutAYearIsTheNearestSuchDay) {
    EXPECT_EQ(near("3/9"), "2026-03-09");
    EXPECT_EQ(near("3/10"), "2026-03-10") << "to come, and near";
    EXPECT_EQ(near("24 Dec"), "2025-12-24");
    EXPECT_EQ(near("4/1"), "2026-04-01");
    EXPECT_EQ(
        near("1/5", Date{std::chrono::year(2026), std::chrono::December, std::chrono::day(20)}),
        "2027-01-05");
}

TEST(NearDate, OfTwoAsNearIsTheOneToCome) {
    // [calc] 2026-06-15 to 2026-12-14 are 182 days, to 2025-12-15 182 as well.
    const Date middle{std::chrono::year(2026), std::chrono::June, std::chrono::day(15)};
    EXPECT_EQ(near("12/14", middle), "2026-12-14");
    EXPECT_EQ(near("12/15", middle), "2025-12-15") << "182 days back, 183 ahead";
}

TEST(NearDate, SkipsYearsWithoutSuchADay) {
    EXPECT_EQ(near("2/29", Date{std::chrono::year(2027), std::chrono::July, std::chrono::day(1)}),
        "2028-02-29");
    EXPECT_EQ(near("2/29"), "") << "none of 2025, 2026 and 2027 has one";
}

TEST(NearDate, NeedsAYearWhereNoDayIsKnown) {
    EXPECT_EQ(near("3/4", noDate), "");
    EXPECT_EQ(near("3/4/2026", noDate), "2026-03-04");
    EXPECT_EQ(parseNearDate("soon", true, today).error().sentence,
        "\"soon\" is not a date; write it as 2026-11-25.");
}
