// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/quote.h"

#include <gtest/gtest.h>

namespace miterbook {

namespace {

TEST(InQuotes, RepeatsShortInput) {
    EXPECT_EQ(inQuotes("36 1/0"), "\"36 1/0\"");
    EXPECT_EQ(inQuotes(""), "\"\"");
    EXPECT_EQ(inQuotes(std::string(60, 'a')), '"' + std::string(60, 'a') + '"');
}

TEST(InQuotes, CutsLongInput) {
    EXPECT_EQ(inQuotes(std::string(61, 'a')), '"' + std::string(60, 'a') + "\u2026\"");
}

TEST(InQuotes, NeverCutsInsideACharacter) {
    const std::string long59 = std::string(59, 'a');
    const std::string long58 = std::string(58, 'a');
    EXPECT_EQ(inQuotes(long59 + "\u00bd and more"), '"' + long59 + "\u2026\""); // two bytes
    EXPECT_EQ(inQuotes(long58 + "\u2033 and"), "\"" + long58 + "\u2026\"");
    EXPECT_EQ(inQuotes(std::string(70, '\x80')), "\"\u2026\""); // no character begins at all
}

} // namespace

} // namespace miterbook
