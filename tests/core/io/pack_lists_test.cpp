// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/pack_lists.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

using ::testing::HasSubstr;

std::string refusedPieces(std::string_view text) {
    const auto read = readPieces(text);
    return read ? "(was read)" : read.error().sentence;
}

std::string refusedSticks(std::string_view text) {
    const auto read = readSticks(text);
    return read ? "(was read)" : read.error().sentence;
}

TEST(PackLists, ReadsPieces) {
    const auto pieces = readPieces(
        "length,count,label\n42 7/8,2,W1 head\n5'6 7/8\",2,W1 leg\n902mm,1,\n");
    ASSERT_TRUE(pieces.ok());
    ASSERT_EQ(pieces->size(), 3U);
    EXPECT_EQ((*pieces)[0], (PackPiece{Length::sixteenths(686), 2, "W1 head"}));
    EXPECT_EQ((*pieces)[1].length, Length::sixteenths(1070));
    EXPECT_EQ((*pieces)[2].length, Length::millimetres(902));
}

TEST(PackLists, ReadsLongDecimals) {
    const auto pieces = readPieces("Count;Length\n1;100000\n3;80.1875\n1;0.0001\n");
    ASSERT_TRUE(pieces.ok());
    EXPECT_EQ((*pieces)[0].length, Length::inches(100'000));
    EXPECT_EQ((*pieces)[1].length, Length::sixteenths(1283));
    EXPECT_EQ((*pieces)[2].length.nm(), 2540);
}

TEST(PackLists, ReadsSticks) {
    const auto sticks = readSticks("length,price,have\n16',12.80,\n8',6.5,3\n14',0,0\n");
    ASSERT_TRUE(sticks.ok());
    ASSERT_EQ(sticks->size(), 3U);
    EXPECT_EQ((*sticks)[0], (PackStick{Length::feet(16), Money::cents(1280), std::nullopt}));
    EXPECT_EQ((*sticks)[1], (PackStick{Length::feet(8), Money::cents(650), 3}));
    EXPECT_EQ((*sticks)[2].have, 0);
    EXPECT_FALSE((*readSticks("length,price\n96,4\n"))[0].have);
}

TEST(PackLists, SaysWhatIsWrongAndWhere) {
    EXPECT_EQ(refusedPieces("length,count\n42,1\n36 1/0,1\n"),
        "line 3, length: \"36 1/0\" divides by zero.");
    EXPECT_THAT(refusedPieces("length,count\n100001,1\n"), HasSubstr("at most 100 000 in"));
    EXPECT_THAT(refusedPieces("length,count\n0,1\n"), HasSubstr("line 2, length"));
    EXPECT_THAT(refusedPieces("length,count\n-5,1\n"), HasSubstr("negative"));
    EXPECT_THAT(refusedPieces("length,count\n5,0\n"), HasSubstr("line 2, count"));
    EXPECT_THAT(refusedPieces("length,count\n5,\n"), HasSubstr("line 2, count"));
    EXPECT_THAT(refusedPieces("length,number\n5,1\n"), HasSubstr("no column \"count\""));
    EXPECT_THAT(refusedPieces("length,count\n"), HasSubstr("nothing below"));
    EXPECT_THAT(refusedSticks("length,price\n96,free\n"), HasSubstr("line 2, price"));
    EXPECT_THAT(refusedSticks("length,price\n96,-1\n"), HasSubstr("cannot be negative"));
    EXPECT_THAT(refusedSticks("length,price,have\n96,1,some\n"), HasSubstr("line 2, have"));
    EXPECT_THAT(refusedSticks("length,have\n96,1\n"), HasSubstr("no column \"price\""));
}

TEST(PackLists, TakesFiftyThousandPieces) {
    EXPECT_TRUE(readPieces("length,count\n42,30000\n40,20000\n").ok());
    EXPECT_THAT(refusedPieces("length,count\n42,30000\n40,20001\n"), HasSubstr("50001 pieces"));
    std::string lines = "length,count\n";
    for (int i = 0; i < 50'000; ++i)
        lines += "42.5,1\n";
    EXPECT_EQ(readPieces(lines)->size(), 50'000U);
}

} // namespace

} // namespace miterbook
