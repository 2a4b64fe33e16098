// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/set_text.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

using Kind = PaperTable::Kind;

/// A table of so many rows, and a total if wanted; every third row is high.
Paper paperOf(int rows, bool groups, bool total = true) {
    Paper paper;
    paper.title = "Bid";
    paper.letterhead = {"Quillfeather Trim"};
    PaperTable table;
    table.title = "Work";
    table.columns = {{"Work"}, {"Comprising", PaperColumn::Align::left, 20},
        {"Price", PaperColumn::Align::right}};
    for (int i = 0; i < rows; ++i) {
        if (groups && i % 7 == 0)
            table.rows.push_back({Kind::group, {Cell::of("Group " + std::to_string(i))}});
        std::string words = i % 3 == 0 ? "long " : "short";
        for (int k = 0; i % 3 == 0 && k < 40; ++k)
            words += "and longer ";
        table.rows.push_back({Kind::plain,
            {Cell::of("Row " + std::to_string(i)), Cell::of(words), Cell::of("1.00")}});
    }
    if (total)
        table.rows.push_back({Kind::total, {Cell::of("Total"), {}, Cell::of("99.00")}});
    paper.blocks.emplace_back(std::move(table));
    return paper;
}

} // namespace

class Orphans : public testing::TestWithParam<PageSize> {};

TEST_P(Orphans, ATotalIsNeverWithoutTwoRows) {
    Device device(GetParam());
    for (int rows = 2; rows <= 130; ++rows) {
        const PaperPainter painter(paperOf(rows, false), *device);
        const SetPage& last = painter.set().page(painter.pageCount() - 1);
        ASSERT_EQ(countOf(last, QStringLiteral("Total")), 1) << rows;
        EXPECT_GE(countOf(last, QStringLiteral("Row ")), 2) << rows;
    }
}

TEST_P(Orphans, ALastRowIsNeverAlone) {
    Device device(GetParam());
    for (int rows = 2; rows <= 130; ++rows) {
        const PaperPainter painter(paperOf(rows, false, false), *device);
        const SetPage& last = painter.set().page(painter.pageCount() - 1);
        EXPECT_GE(countOf(last, QStringLiteral("Row ")), 2) << rows;
    }
}

TEST_P(Orphans, HeadsStandOnEveryPageAndNoRowIsLost) {
    Device device(GetParam());
    for (int rows = 1; rows <= 130; rows += 3) {
        const PaperPainter painter(paperOf(rows, true), *device);
        std::ptrdiff_t found = 0;
        for (int page = 0; page < painter.pageCount(); ++page) {
            EXPECT_EQ(countOf(painter.set().page(page), QStringLiteral("Comprising")), 1) << rows;
            found += countOf(painter.set().page(page), QStringLiteral("Row "));
        }
        EXPECT_EQ(found, rows);
    }
}

TEST_P(Orphans, AGroupIsNeverTheLastOnAPage) {
    Device device(GetParam());
    for (int rows = 8; rows <= 130; rows += 2) {
        const PaperPainter painter(paperOf(rows, true), *device);
        for (int page = 0; page < painter.pageCount(); ++page) {
            const std::vector<TextMark> texts = textsOf(painter.set().page(page));
            EXPECT_FALSE(texts.back().text.startsWith(QLatin1String("Group"))) << rows;
        }
    }
}

TEST_P(Orphans, NothingReachesIntoTheFooter) {
    Device device(GetParam());
    const QSizeF area = device.area();
    for (int rows = 1; rows <= 100; ++rows) {
        const PaperPainter painter(paperOf(rows, true), *device);
        for (int page = 0; page < painter.pageCount(); ++page) {
            const auto footer = std::get<TextMark>(painter.set().footer(page).marks.front());
            for (const PlacedBlock& placed : painter.set().page(page))
                EXPECT_LT(placed.top + placed.block->height, footer.at.y());
            EXPECT_LE(footer.at.y(), area.height());
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, Orphans, testing::Values(PageSize::letter, PageSize::a4),
    [](const auto& size) { return std::string(word(size.param)); });
