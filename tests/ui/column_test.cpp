// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/door_columns.h"
#include "stages/plan/room_columns.h"
#include "stages/plan/window_columns.h"
#include "ui/ui_kit.h"
#include "widgets/profile_column.h"

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

TEST(Chosen, ByWordPrefixOrNotAtAll) {
    const QStringList words{u"window"_s, u"prehung door"_s, u"pocket door"_s};
    EXPECT_EQ(*chosenOf(words, u"WINDOW "_s), 0);
    EXPECT_EQ(*chosenOf(words, u"po"_s), 2);
    EXPECT_FALSE(chosenOf(words, u"p"_s).ok()) << "two begin with it";
    const auto unknown = chosenOf(words, u"gate"_s);
    ASSERT_FALSE(unknown.ok());
    EXPECT_EQ(
        unknown.error().sentence, "\"gate\" is not one of: window, prehung door, pocket door.");
}

TEST(Chosen, YesAndNo) {
    EXPECT_TRUE(*parseYesNo(u"X"_s));
    EXPECT_FALSE(*parseYesNo(u""_s));
    EXPECT_FALSE(parseYesNo(u"maybe"_s).ok());
}

TEST(Width, TakesAWholeSize) {
    const UiKit kit;
    Opening door;
    door.kind = OpeningKind::prehungDoor;
    ASSERT_TRUE(putWidthOrSize(door, u"3068"_s, kit.book()).ok());
    EXPECT_EQ(door.width, Length::inches(36)); // [cp] 3068 is 3 ft 0 by 6 ft 8
    EXPECT_EQ(door.height, Length::inches(80));
    ASSERT_TRUE(putWidthOrSize(door, u"2-8"_s, kit.book()).ok());
    EXPECT_EQ(door.width, Length::inches(32));
    EXPECT_EQ(door.height, Length::inches(80)) << "a width alone leaves the height";
    Opening window;
    ASSERT_TRUE(putWidthOrSize(window, u"36 x 60"_s, kit.book()).ok());
    EXPECT_EQ(window.height, Length::inches(60));
    ASSERT_TRUE(putWidthOrSize(window, u"35 1/2"_s, kit.book()).ok());
    EXPECT_EQ(window.width, Length::sixteenths(35 * 16 + 8));
    EXPECT_FALSE(putWidthOrSize(window, u"36 1/0"_s, kit.book()).ok());
}

/// What a cell says must be taken back as the same row: else a copied cell could not be pasted.
template <class Row>
void expectReadsBack(
    const std::vector<Row>& rows, std::span<const Column<Row>> columns, const Book& book) {
    for (const Row& row : rows) {
        for (const Column<Row>& column : columns) {
            if (!column.edit || (column.applies && !column.applies(row)))
                continue;
            Row copy = row;
            const QString cell = column.textOf(row, book);
            const auto put = column.edit(copy, cell, book);
            EXPECT_TRUE(put.ok()) << column.title << " does not take its own text "
                                  << cell.toStdString();
            EXPECT_EQ(column.textOf(copy, book), cell) << column.title;
        }
    }
}

template <class Row>
std::vector<Row> rowsOf(const UiKit& kit) {
    std::vector<Row> rows;
    for (const auto& [id, row] : kit.book().sheet(kit.plan()).of<Row>())
        rows.push_back(row);
    return rows;
}

TEST(Columns, TakeTheirOwnTexts) {
    const UiKit kit;
    const auto openings = rowsOf<Opening>(kit);
    std::vector<Opening> windows;
    std::vector<Opening> doors;
    for (const Opening& opening : openings)
        (opening.isWindow() ? windows : doors).push_back(opening);
    ASSERT_FALSE(windows.empty());
    ASSERT_FALSE(doors.empty());
    expectReadsBack<Opening>(windows, windowColumns(), kit.book());
    expectReadsBack<Opening>(doors, doorColumns(), kit.book());
    expectReadsBack<Room>(rowsOf<Room>(kit), roomColumns(), kit.book());
    expectReadsBack<Level>(rowsOf<Level>(kit), levelColumns(), kit.book());
}

TEST(Profiles, AreChosenByNameAndUse) {
    const UiKit kit;
    const QStringList casings = profileNames(kit.book(), {ProfileUse::casing}, u"as plan"_s);
    EXPECT_EQ(casings.first(), u"as plan"_s);
    EXPECT_GT(casings.size(), 1);
    EXPECT_FALSE(*chosenProfile(kit.book(), u"as plan"_s, u"as plan"_s));
    const auto found = chosenProfile(kit.book(), casings.at(1), u"as plan"_s);
    ASSERT_TRUE(found.ok());
    EXPECT_EQ(kit.book().prices.profile(*found)->use, ProfileUse::casing);
    EXPECT_FALSE(chosenProfile(kit.book(), u"no such moulding"_s, u"as plan"_s).ok());
}

} // namespace
} // namespace miterbook
