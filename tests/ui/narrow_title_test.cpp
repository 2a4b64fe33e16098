// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/column_text.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

std::string narrowed(const char* title) {
    return narrowTitle(QString::fromUtf8(title)).toStdString();
}

TEST(NarrowTitle, LeavesShortTitlesAlone) {
    EXPECT_EQ(narrowed(""), "");
    EXPECT_EQ(narrowed("No."), "No.");
    EXPECT_EQ(narrowed("Price, $"), "Price, $");
}

TEST(NarrowTitle, BreaksLongTitlesWhereTheWiderLineIsNarrowest) {
    EXPECT_EQ(narrowed("Width top, in"), "Width\ntop, in");
    EXPECT_EQ(narrowed("Diagonal down, in"), "Diagonal\ndown, in");
    EXPECT_EQ(narrowed("Hours bid"), "Hours\nbid");
    EXPECT_EQ(narrowed("Price of all, $"), "Price of\nall, $");
}

TEST(NarrowTitle, LeavesAUnitWithItsWord) {
    EXPECT_EQ(narrowed("Billed, $"), "Billed, $");
    EXPECT_EQ(narrowed("Thickness, in"), "Thickness, in");
    EXPECT_EQ(narrowed("Stick length, ft"), "Stick\nlength, ft");
}

TEST(NarrowTitle, CannotBreakOneWord) {
    EXPECT_EQ(narrowed("Backcharges"), "Backcharges");
}

TEST(NarrowTitle, CountsLettersNotBytes) {
    EXPECT_EQ(narrowed("Ränder ½"), "Ränder ½");
}

} // namespace
} // namespace miterbook
