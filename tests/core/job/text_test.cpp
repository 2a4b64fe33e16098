// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/row_title.h"
#include "job/text_check.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

TEST(SoundText, PlainAndForeign) {
    for (const char* text : {"", "Great room", "two\nlines\twith tab", "½″ × 8′", "木工", "🪚"})
        EXPECT_TRUE(isSoundText(text)) << text;
}

// [pub] RFC 3629, sections 3 and 10: overlong forms, surrogates and code points past U+10FFFF.
TEST(SoundText, BrokenUtf8) {
    for (const char* text : {"\xFF", "\x80", "\xC3", "\xC0\xAF", "\xE0\x80\xAF", "\xED\xA0\x80",
             "\xF4\x90\x80\x80", "\xF0\x80\x80\xAF", "\xE2\x80", "a\xC3("})
        EXPECT_FALSE(isSoundText(text));
}

TEST(SoundText, ControlCharacters) {
    EXPECT_FALSE(isSoundText(std::string_view("\0", 1)));
    EXPECT_FALSE(isSoundText("\x1B[31m"));
    EXPECT_FALSE(isSoundText("\x7F"));
    EXPECT_FALSE(isSoundText("\xC2\x85")); // next line, a C1 control
    EXPECT_FALSE(isSoundText("carriage\r"));
}

TEST(RowTitle, TakesNameMarkOrTask) {
    const Book book = smallBook();
    const auto& rows = book.sheet(Id<Plan>(31));
    EXPECT_EQ(titleOf(*rows.of<Room>().find(Id<Room>(42))), "room \"Great room\"");
    EXPECT_EQ(titleOf(*rows.of<Opening>().find(Id<Opening>(43))), "opening \"W1\"");
    EXPECT_EQ(titleOf(*book.prices.of<Stick>().find(Id<Stick>(21))), "stick 21");
    LabourRate rate;
    rate.task = Task::mantel;
    EXPECT_EQ(titleOf(rate), "labour rate \"mantel\"");
}

} // namespace
} // namespace miterbook
