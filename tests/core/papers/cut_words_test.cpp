// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/cut_words.h"

#include <gtest/gtest.h>

using namespace miterbook;

TEST(NumberRanges, SayThreeAndMoreInARowAsARange) {
    EXPECT_EQ(numberRanges({}), "");
    EXPECT_EQ(numberRanges({7}), "7");
    EXPECT_EQ(numberRanges({1, 2}), "1, 2");
    EXPECT_EQ(numberRanges({3, 1, 2}), "1–3");
    EXPECT_EQ(numberRanges({5, 1, 2, 3, 9, 10, 12}), "1–3, 5, 9, 10, 12");
    EXPECT_EQ(numberRanges({4, 4, 5, 6, 6}), "4–6");
    std::vector<int> many;
    for (int i = 1; i <= 22; ++i)
        many.push_back(i);
    EXPECT_EQ(numberRanges(many), "1–22");
}

TEST(NameRanges, GoByTheNumberAtTheEnd) {
    EXPECT_EQ(nameRanges({"W1", "W2", "W3", "W4"}), "W1–W4");
    EXPECT_EQ(nameRanges({"W1", "W2", "D3"}), "W1, W2, D3");
    EXPECT_EQ(nameRanges({"W9", "W10", "W11"}), "W9–W11");
    EXPECT_EQ(nameRanges({"W3", "W2", "W1"}), "W3, W2, W1"); // in the order given
    EXPECT_EQ(nameRanges({"W1.1", "W1.2", "W1.3"}), "W1.1–W1.3");
    EXPECT_EQ(nameRanges({"A01", "A02", "A03"}), "A01, A02, A03"); // not counted up without doubt
    EXPECT_EQ(nameRanges({"Den", "Den", "Hall"}), "Den, Den, Hall");
    EXPECT_EQ(nameRanges({"W99999999999", "W99999999999", ""}), "W99999999999, W99999999999");
}

TEST(SticksText, SaysWhatToTakeUpAndWhatToGoOnWith) {
    SheetStop stop;
    for (int i = 1; i <= 5; ++i)
        stop.sticks.push_back({i, 1, i > 1, {}});
    EXPECT_EQ(sticksText(stop), "take up 2–5; go on with 1");
}

TEST(ServedText, GathersOpeningsServedAlike) {
    SawSheet sheet;
    SheetStop stop;
    const auto add = [&](const char* name, int count, Length off) {
        for (int i = 0; i < count; ++i) {
            SheetPiece piece;
            piece.piece.source.name = name;
            piece.shortPoint = Length::inches(36);
            piece.piece.shortPoint = Length::inches(36) - off;
            stop.pieces.push_back(sheet.pieces.size());
            sheet.pieces.push_back(piece);
        }
    };
    for (const char* name : {"W1", "W2", "W3"})
        add(name, 2, {});
    add("W7", 2, Length::thirtySeconds(1));
    add("D1", 1, {});
    EXPECT_EQ(servedText(sheet, stop, {}), "2 each of W1–W3; W7 ×2 (reveals +1/64); D1");
}
