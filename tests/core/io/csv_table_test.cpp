// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/csv_table.h"
#include "io/decoded_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <random>

namespace miterbook {

namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;

CsvTable table(std::string_view bytes) {
    auto read = readCsv(bytes);
    EXPECT_TRUE(read.ok()) << (read ? "" : read.error().sentence);
    return read ? *read : CsvTable();
}

std::string refusal(std::string_view bytes) {
    const auto read = readCsv(bytes);
    return read ? "(was read)" : read.error().sentence;
}

TEST(CsvTable, ReadsTheThreeDelimiters) {
    for (const char delimiter : {',', ';', '\t'}) {
        const std::string d(1, delimiter);
        const CsvTable read = table("Mark" + d + "Size" + d + "Note\nW1" + d + "3050" + d + "x\n");
        EXPECT_EQ(read.delimiter, delimiter);
        ASSERT_EQ(read.records.size(), 2U);
        EXPECT_THAT(read.records[1].cells, ElementsAre("W1", "3050", "x"));
    }
}

TEST(CsvTable, TellsSemicolonsFromDecimalCommas) {
    const CsvTable read = table("Mark;Width;Height\nW1;35,5;60,25\nW2;30,5;48,0\n");
    EXPECT_EQ(read.delimiter, ';');
    EXPECT_THAT(read.records[2].cells, ElementsAre("W2", "30,5", "48,0"));
}

TEST(CsvTable, SniffsPastATitleLine) {
    const CsvTable read = table("Window schedule, first floor\nMark;Size;Room\nW1;3050;Den\n");
    EXPECT_EQ(read.delimiter, ';');
}

TEST(CsvTable, KeepsQuotedCells) { // RFC 4180 section 2, rules 5 to 7
    const CsvTable read = table("a,b\n\"x, y\",\"say \"\"so\"\"\"\n\"two\nlines\",z\n");
    EXPECT_THAT(read.records[1].cells, ElementsAre("x, y", "say \"so\""));
    EXPECT_THAT(read.records[2].cells, ElementsAre("two\nlines", "z"));
}

TEST(CsvTable, KeepsInchMarksInCellsWithoutQuotes) {
    const CsvTable read = table("Mark,Size,Note\nW1,3'0\" x 5'0\",a\n");
    EXPECT_THAT(read.records[1].cells, ElementsAre("W1", "3'0\" x 5'0\"", "a"));
}

TEST(CsvTable, CountsLinesOfTheFile) {
    for (const std::string end : {"\n", "\r\n", "\r"}) {
        const CsvTable read = table("a,b" + end + end + "\"x" + end + "y\",2" + end + "3,4" + end);
        ASSERT_EQ(read.records.size(), 3U) << end.size();
        EXPECT_EQ(read.records[0].line, 1);
        EXPECT_EQ(read.records[1].line, 3);
        EXPECT_EQ(read.records[2].line, 5);
    }
}

TEST(CsvTable, LeavesOutEmptyLines) {
    const CsvTable read = table("a,b\n,,\n  \n\t\n1,2");
    ASSERT_EQ(read.records.size(), 2U);
    EXPECT_EQ(read.records[1].line, 5);
}

TEST(CsvTable, TrimsCells) {
    const CsvTable read = table("a,b\n  x  ,\" y\xC2\xA0\"\n");
    EXPECT_THAT(read.records[1].cells, ElementsAre("x", "y"));
}

TEST(CsvTable, CellOfAShortRecordIsEmpty) {
    const CsvTable read = table("a,b,c\n1,2\n");
    EXPECT_EQ(read.records[1].cell(1), "2");
    EXPECT_EQ(read.records[1].cell(2), "");
}

TEST(CsvTable, FormulasStayText) {
    const CsvTable read = table("Mark,Note\n=1+1,\"@SUM(A1)\"\n+W2,-x\n");
    EXPECT_THAT(read.records[1].cells, ElementsAre("=1+1", "@SUM(A1)"));
    EXPECT_THAT(read.records[2].cells, ElementsAre("+W2", "-x"));
}

TEST(CsvTable, RefusesWhatIsNoTable) {
    EXPECT_THAT(refusal(""), HasSubstr("nothing in the file"));
    EXPECT_THAT(refusal("\xEF\xBB\xBF\n\n"), HasSubstr("nothing in the file"));
    EXPECT_THAT(refusal(std::string_view("a,b\n1,\0", 7)), HasSubstr("NUL byte in line 2"));
    EXPECT_THAT(refusal("a,b\n1,2\n3,\"never closed\n5,6\n"),
        HasSubstr("Line 3 opens a quote that is never closed"));
}

TEST(CsvTable, RefusesAbsurdSizes) {
    EXPECT_THAT(refusal("a,b\n1," + std::string(10'001, 'x')), HasSubstr("Line 2 has a cell"));
    EXPECT_TRUE(readCsv("a,b\n1," + std::string(10'000, 'x')).ok());
    EXPECT_THAT(refusal(std::string(500, ',')), HasSubstr("more than 500 columns"));
    std::string many;
    for (int i = 0; i < 100'001; ++i)
        many += "a,b\n";
    EXPECT_THAT(refusal(many), HasSubstr("Line 100001 is beyond"));
    many.resize(many.size() - 4);
    EXPECT_TRUE(readCsv(many).ok());
}

TEST(CsvTable, RandomBytesAreReadOrRefusedWithASentence) {
    std::mt19937 random(7);
    const std::string alphabet("a1,;\t\"\r\n' x\xBD\xC2\xE2\x80\0", 17);
    for (int i = 0; i < 3000; ++i) {
        std::string bytes;
        for (unsigned n = random() % 60; n > 0; --n)
            bytes += i % 2 ? alphabet[random() % alphabet.size()] : static_cast<char>(random());
        const auto read = readCsv(bytes);
        EXPECT_FALSE(read ? read->records.empty() : read.error().sentence.empty());
    }
}

TEST(DecodedText, ReadsTheEncodings) {
    EXPECT_EQ(*decodedText("35\xC2\xBD"), "35½"); // UTF-8
    EXPECT_EQ(*decodedText("\xEF\xBB\xBF"
                           "35\xC2\xBD"),
        "35½");                                               // with byte order mark
    EXPECT_EQ(*decodedText("35\xBD caf\xE9"), "35½ café");    // Latin-1
    EXPECT_EQ(*decodedText("35\x94 \x96 6\x92"), "35” – 6’"); // Windows-1252, CP1252.TXT [pub]
    EXPECT_EQ(*decodedText(std::string_view("\xFF\xFE"
                                            "3\0005\0",
                  6)),
        "35"); // UTF-16, little end
    EXPECT_EQ(*decodedText(std::string_view("\xFE\xFF"
                                            "\0003\0005",
                  6)),
        "35"); // big end
}

TEST(DecodedText, DropsStrayControls) {
    EXPECT_EQ(*decodedText("a\x01"
                           "b\x7F\tc\r\n"),
        "ab\tc\r\n");
}

TEST(DecodedText, FoldsAndTrims) {
    EXPECT_EQ(foldedText("  Rough\r\n  OPENING  Éa "), "rough opening éa");
    EXPECT_EQ(singleLine(" Great\n room "), "Great room");
    EXPECT_EQ(trimmedText("\xC2\xA0 a  b \n"), "a  b");
}

} // namespace

} // namespace miterbook
