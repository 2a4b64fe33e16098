// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/picture_paper.h"

#include "papers/write_paper.h"
#include "support/billed_house.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

TEST(PicturePaper, SaysOfWhichHouseAndWhen) {
    const Book book = billedHouse();
    const Paper paper = picturePaper(
        {book, {}, lot7, {}, marchDay(20)}, "Hours of\nthe house", {"31 of 40 are used.", ""});
    EXPECT_EQ(paper.title, "Hours of the house");
    ASSERT_EQ(paper.blocks.size(), 1U);
    EXPECT_EQ(std::get<Paragraph>(paper.blocks.front()).lines,
        std::vector<std::string>{"31 of 40 are used."});
    const std::string words = paperText(paper);
    for (const char* part : {"Harrow Homes", "Lot 7", "3/20/2026", "31 of 40 are used."})
        EXPECT_NE(words.find(part), std::string::npos) << part << " in\n" << words;
}

TEST(PicturePaper, OfTheWholeShopNamesNoHouse) {
    const Book book = billedHouse();
    const Paper paper = picturePaper({book, {}, {}, {}, marchDay(20)}, "What builders owe", {});
    EXPECT_TRUE(paper.blocks.empty());
    EXPECT_EQ(paperText(paper).find("Lot 7"), std::string::npos);
    EXPECT_EQ(paper.facts.size(), 1U) << "the day alone";
}

} // namespace
} // namespace miterbook
