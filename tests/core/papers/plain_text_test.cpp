// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/quote.h"
#include "papers/plain_text.h"

#include <gtest/gtest.h>

using namespace miterbook;
using Lines = std::vector<std::string>;

TEST(PlainText, TypedLinesLoseBlanks) {
    EXPECT_EQ(typedLines("one\r\n\n  two  \n"), (Lines{"one", "two"}));
    EXPECT_EQ(typedLines(" \n"), Lines{});
}

TEST(PlainText, OneLineHasNoControlCharacters) {
    EXPECT_EQ(oneLine("\ta\nb\x01"), "a b");
    EXPECT_EQ(oneLine(" \r\n "), "");
}

TEST(PlainText, WidthCountsCharactersNotBytes) {
    EXPECT_EQ(textWidth("Müller"), 6U);
    EXPECT_EQ(textWidth("e\xCC\x81"), 1U); // e and a combining acute
}

TEST(PlainText, WrapsBetweenWords) {
    EXPECT_EQ(wrapped("the long point of a head", 10), (Lines{"the long", "point of a", "head"}));
    EXPECT_EQ(wrapped("", 10), Lines{""});
}

TEST(PlainText, BreaksAWordThatIsTooLong) {
    EXPECT_EQ(wrapped("abcdefghij kl", 4), (Lines{"abcd", "efgh", "ij", "kl"}));
    EXPECT_EQ(wrapped("äöüäöü", 4), (Lines{"äöüä", "öü"}));
    EXPECT_EQ(wrapped("a abcdef", 4), (Lines{"a", "abcd", "ef"}));
}

TEST(PlainText, EveryLineFitsWhateverTheWidth) {
    const std::string text = "Großer Flur mit überlangenWörternOhneEnde und kurzen";
    for (std::size_t width = 1; width < 60; ++width) {
        for (const std::string& line : wrapped(text, width))
            EXPECT_LE(textWidth(line), width);
    }
}

// Sequences of Unicode 15 table 3-7 that are not well formed [pub].
TEST(PlainText, ReplacesWhatIsNotUtf8) {
    const std::string bad = "\xEF\xBF\xBD";
    EXPECT_EQ(validUtf8("a\xFFz"), "a" + bad + "z");
    EXPECT_EQ(validUtf8("\xC0\xAF"), bad + bad);
    EXPECT_EQ(validUtf8("\xED\xA0\x80"), bad + bad + bad); // a surrogate
    EXPECT_EQ(validUtf8("\xE2\x82"), bad + bad);           // cut short
    EXPECT_EQ(validUtf8("½ ″ 𝅘"), "½ ″ 𝅘");
}

TEST(PlainText, JoinsWhatIsThere) {
    EXPECT_EQ(joined({"a", "", "b"}), "a, b");
    EXPECT_EQ(capitalised("built-ins"), "Built-ins");
    EXPECT_EQ(capitalised(""), "");
}
