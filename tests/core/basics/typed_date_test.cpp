// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/hours/time_kit.h"

#include "basics/typed_date.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

/// 2026-03-09 is today.
std::string read(std::string_view text, bool monthFirst = true) {
    return isoDate(parseTypedDate(text, monthFirst, weekday(7)).valueOr(noDate));
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
    EXPECT_EQ(parseTypedDate("4th", true, weekday(7)).error().sentence,
        "\"4th\" is not a date; write it as 2026-11-25.");
}
