// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/set_text.h"
#include "printing/table_widths.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

PaperTable tableOf(std::vector<PaperColumn> columns, std::vector<const char*> texts) {
    PaperTable table;
    table.columns = std::move(columns);
    PaperTable::Row row;
    for (const char* text : texts)
        row.cells.push_back(Cell::of(text));
    table.rows.push_back(row);
    return table;
}

} // namespace

TEST(TableWidths, ShareByWeight) {
    Device device;
    const PaperFonts fonts(Paper::Type::office, *device);
    using enum PaperColumn::Align;
    const auto boxes = columnBoxes(
        tableOf({{"a", left, 30}, {"b", left, 10}}, {"x", "y"}), fonts, device.area().width());
    ASSERT_EQ(boxes.size(), 2U);
    EXPECT_NEAR(boxes[0].width, 3 * boxes[1].width, 1e-6);
    EXPECT_NEAR(boxes[1].left + boxes[1].width, device.area().width(), 1e-6);
    EXPECT_GT(boxes[1].left, boxes[0].width);
}

TEST(TableWidths, NumbersHaveTheRoomTheyNeed) {
    Device device;
    const PaperFonts fonts(Paper::Type::office, *device);
    using enum PaperColumn::Align;
    const auto boxes = columnBoxes(
        tableOf({{"a", left, 500}, {"b", right, 1}}, {"x", "$12,345,678.90"}), fonts,
        device.area().width());
    EXPECT_GE(boxes[1].width, fonts.width(TextRole::body, QStringLiteral("$12,345,678.90")) - 1e-6);
}

TEST(TableWidths, MoreThanThePageHoldsGoesByWeight) {
    Device device;
    const PaperFonts fonts(Paper::Type::office, *device);
    const std::string endless(500, '9');
    using enum PaperColumn::Align;
    const auto boxes = columnBoxes(
        tableOf({{"a", right, 1}, {"b", right, 1}}, {endless.c_str(), "1"}), fonts,
        device.area().width());
    EXPECT_NEAR(boxes[0].width, boxes[1].width, 1e-6);
    EXPECT_TRUE(columnBoxes({}, fonts, 100).empty());
}
