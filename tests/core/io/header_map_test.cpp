// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/header_map.h"

#include "io/decoded_text.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <set>

namespace miterbook {

namespace {

using ::testing::ElementsAre;
using ::testing::HasSubstr;
using enum ScheduleField;

HeaderMap map(ScheduleKind kind, const std::string& line, const Table<HeaderName>& remembered = {},
    const std::vector<HeaderChoice>& choices = {}) {
    return mapHeaders(kind, *readCsv(line + "\n1,2,3,4,5,6,7\n"), remembered, choices);
}

Table<HeaderName> remembers(const std::string& header, const std::string& column) {
    Table<HeaderName> table;
    table.put({Id<HeaderName>(1), "windows", header, column});
    return table;
}

TEST(HeaderMap, KnowsCommonHeaders) {
    const auto found = map(ScheduleKind::windows, "MARK,Qty.,W,Hgt,Window Type,Location,Remarks");
    EXPECT_THAT(found.fields(), ElementsAre(mark, quantity, width, height, type, room, note));
    EXPECT_TRUE(found.unmapped().empty());
}

TEST(HeaderMap, NoHeaderMeansTwoColumns) {
    for (const auto& kind : Words<ScheduleKind>::list) {
        std::set<std::string> seen;
        for (const ScheduleColumn& column : columnsOf(kind.value)) {
            std::string_view list = column.headers;
            while (!list.empty()) {
                const std::size_t bar = std::min(list.find('|'), list.size());
                const std::string header(list.substr(0, bar));
                EXPECT_TRUE(seen.insert(header).second) << header;
                EXPECT_EQ(foldedText(header), header) << "could never be found";
                list.remove_prefix(std::min(bar + 1, list.size()));
            }
        }
    }
}

TEST(HeaderMap, EveryFieldHasItsWord) {
    std::set<std::string_view> words;
    for (const auto& entry : Words<ScheduleField>::list)
        EXPECT_TRUE(words.insert(entry.text).second) << entry.text;
    EXPECT_EQ(words.size(), static_cast<std::size_t>(note) + 1);
}

TEST(HeaderMap, ReadsTheUnitInAHeader) {
    const auto found = map(
        ScheduleKind::windows, "Mark,Width (mm),Height [in],Sill FT,wall_thickness cm");
    EXPECT_THAT(found.fields(), ElementsAre(mark, width, height, sill, wallThickness));
    EXPECT_EQ(found.headers[1].unit, HeaderUnit::millimetres);
    EXPECT_EQ(found.headers[2].unit, HeaderUnit::inches);
    EXPECT_EQ(found.headers[3].unit, HeaderUnit::feet);
    EXPECT_EQ(found.headers[4].unit, HeaderUnit::centimetres);
}

TEST(HeaderMap, LeavesRoughOpeningsAlone) {
    const auto found = map(ScheduleKind::windows, "Mark,Size,RO Width,R.O. Height");
    EXPECT_THAT(found.fields(), ElementsAre(mark, size));
    EXPECT_THAT(found.unmapped(), ElementsAre("RO Width", "R.O. Height"));
}

TEST(HeaderMap, SkipsATitleToTheHeaders) {
    const auto table = readCsv("Door schedule,,\nPlan 4,,\nNo.,Size,Hand\nD1,2868,L\n");
    const auto found = mapHeaders(ScheduleKind::doors, *table, {}, {});
    EXPECT_EQ(found.record, 2U);
    EXPECT_THAT(found.fields(), ElementsAre(mark, size, hand));
}

TEST(HeaderMap, TheFirstOfTwoColumnsHasTheField) {
    const auto found = map(ScheduleKind::windows, "Mark,Tag,Size");
    EXPECT_EQ(found.columnOf(mark), 0U);
    EXPECT_THAT(found.unmapped(), ElementsAre("Tag"));
}

TEST(HeaderMap, TheShopsCorrectionWins) {
    const auto found = map(ScheduleKind::windows, "Mark,WDW,Size", remembers("wdw", "mark"));
    EXPECT_EQ(found.columnOf(mark), 1U);
    EXPECT_THAT(found.unmapped(), ElementsAre("Mark"));
}

TEST(HeaderMap, ACorrectionOfAnotherScheduleIsNotUsed) {
    const auto found = map(ScheduleKind::doors, "Door,WDW,Size", remembers("wdw", "mark"));
    EXPECT_EQ(found.columnOf(mark), 0U);
}

TEST(HeaderMap, TheUserWinsOverTheShop) {
    const auto found = map(ScheduleKind::windows, "Name,WDW,Size", remembers("wdw", "mark"),
        {{"NAME", mark}, {"wdw", note}});
    EXPECT_EQ(found.columnOf(mark), 0U);
    EXPECT_EQ(found.columnOf(note), 1U);
}

TEST(HeaderMap, AColumnCanBeLeftOut) {
    const auto found = map(
        ScheduleKind::windows, "Mark,Size,Type", remembers("type", ""), {{"Size", {}}});
    EXPECT_THAT(found.fields(), ElementsAre(mark));
    EXPECT_TRUE(found.headers[1].leftOut);
    EXPECT_TRUE(found.headers[2].leftOut);
    EXPECT_TRUE(found.unmapped().empty()) << "left out on purpose";
}

TEST(HeaderMap, RoomBesideNameIsTheNumber) {
    const auto both = map(ScheduleKind::rooms, "Room,Name,Size");
    EXPECT_THAT(both.fields(), ElementsAre(mark, name, size));
    const auto alone = map(ScheduleKind::rooms, "Room,Size");
    EXPECT_THAT(alone.fields(), ElementsAre(name, size));
}

TEST(MissingColumns, AreNamed) {
    EXPECT_TRUE(missingColumns(ScheduleKind::windows, {mark, size}).empty());
    EXPECT_TRUE(missingColumns(ScheduleKind::doors, {mark, width, height}).empty());
    EXPECT_THAT(missingColumns(ScheduleKind::doors, {width}),
        ElementsAre("mark", HasSubstr("width and height")));
    EXPECT_TRUE(missingColumns(ScheduleKind::rooms, {name, perimeter}).empty());
    EXPECT_TRUE(missingColumns(ScheduleKind::rooms, {mark, outline}).empty());
    EXPECT_THAT(missingColumns(ScheduleKind::rooms, {length}),
        ElementsAre("number or name", HasSubstr("perimeter")));
}

} // namespace

} // namespace miterbook
