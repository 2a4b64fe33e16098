// SPDX-License-Identifier: GPL-3.0-or-later
// Stick diagrams: sticks that are cut alike are drawn once, and none of their numbers is lost.
#include "cut/progress.h"
#include "job/cut_figures.h"
#include "papers/job_papers.h"
#include "papers/set_text.h"
#include "support/level_house.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <map>

using namespace miterbook;
using namespace Qt::Literals::StringLiterals;

namespace {

std::vector<PaperBars::Bar> barsOf(const Paper& paper) {
    std::vector<PaperBars::Bar> bars;
    for (const Block& block : paper.blocks) {
        if (const auto* some = std::get_if<PaperBars>(&block))
            bars.insert(bars.end(), some->bars.begin(), some->bars.end());
    }
    return bars;
}

/// "2–4, 7: 4 of 12 ft" -> 2, 3, 4, 7.
std::vector<int> numbersIn(const std::string& title) {
    std::vector<int> numbers;
    for (const QString& each : QString::fromStdString(title).section(u':', 0, 0).split(u", "_s)) {
        const QStringList ends = each.split(u'–');
        for (int n = ends.front().toInt(); n <= ends.back().toInt(); ++n)
            numbers.push_back(n);
    }
    return numbers;
}

/// Holds every bar against the sheet: its sticks are cut just so, and each stick stands in one bar.
void expectDrawnOnce(const std::vector<PaperBars::Bar>& bars, const SawSheet& sheet) {
    std::map<int, int> times;
    for (const PaperBars::Bar& bar : bars) {
        for (const int number : numbersIn(bar.title)) {
            ++times[number];
            const SheetStick* stick = sheet.stick(number);
            ASSERT_TRUE(stick) << bar.title;
            EXPECT_DOUBLE_EQ(bar.length, stick->length.toInches());
            const std::size_t gone = stick->gone > Length() ? 1 : 0;
            ASSERT_EQ(bar.parts.size(), stick->pieces.size() + gone) << bar.title;
            for (std::size_t n = 0; n < stick->pieces.size(); ++n) {
                const SheetPiece& piece = sheet.pieces[stick->pieces[n]];
                const PaperBars::Part& part = bar.parts[n + gone];
                EXPECT_DOUBLE_EQ(part.length, piece.longPoint.toInches());
                EXPECT_EQ(part.text.starts_with("✓"), piece.isCut()) << bar.title;
            }
        }
    }
    EXPECT_EQ(times.size(), sheet.sticks.size());
    for (const auto& [number, count] : times)
        EXPECT_EQ(count, 1) << "stick " << number;
}

QStringList textsOn(const PaperPainter& painter) {
    QStringList texts;
    for (int page = 0; page < painter.pageCount(); ++page) {
        for (const TextMark& mark : textsOf(painter.set().page(page)))
            texts << mark.text;
    }
    return texts;
}

class SticksPaper : public testing::TestWithParam<PageSize> {};

} // namespace

TEST_P(SticksPaper, DrawsSticksAlikeOnceOnFewPages) {
    const LevelHouse house(26, 18);
    const JobFigures figures = house.figures();
    const Paper paper = sticksPaper(house.job(), figures);
    const SawSheet sheet = cutFiguresFor(house.book, figures).sheet;
    const std::vector<PaperBars::Bar> bars = barsOf(paper);
    expectDrawnOnce(bars, sheet);
    EXPECT_LT(bars.size() * 2, sheet.sticks.size()) << "most sticks have others like them";
    Device device(GetParam());
    const PaperPainter painter(paper, *device);
    EXPECT_LE(painter.pageCount(), 3);
    const QString all = textsOn(painter).join(u' '); // a long title is in two lines
    for (const PaperBars::Bar& bar : bars)
        EXPECT_TRUE(all.contains(QString::fromStdString(bar.title))) << bar.title;
}

INSTANTIATE_TEST_SUITE_P(Sizes, SticksPaper, testing::Values(PageSize::letter, PageSize::a4),
    [](const auto& size) { return std::string(word(size.param)); });

TEST(SticksBegun, TellsSticksApartThatAreNotAsFar) {
    LevelHouse house(26, 18);
    const JobFigures figures = house.figures();
    Table<CutPiece>& kept = house.book.sheets[house.plan].of<CutPiece>();
    IdSource ids(70'000);
    const auto sheet = [&] { return cutFiguresFor(house.book, figures).sheet; };
    const std::size_t before = barsOf(sticksPaper(house.job(), figures)).size();
    const SheetStop first = sheet().stops.front();
    const std::vector<std::size_t> half(
        first.pieces.begin(), first.pieces.begin() + std::ptrdiff_t(first.pieces.size() / 2));
    for (const CutPiece& row : ticked(sheet(), half, PieceState::cut, house.plan, kept, ids))
        kept.put(row);
    const std::vector<PaperBars::Bar> after = barsOf(sticksPaper(house.job(), figures));
    EXPECT_GT(after.size(), before);
    expectDrawnOnce(after, sheet());
    for (const CutPiece& row :
        ticked(sheet(), {half.front()}, PieceState::spoiled, house.plan, kept, ids))
        kept.put(row);
    const std::vector<PaperBars::Bar> spoiled = barsOf(sticksPaper(house.job(), figures));
    expectDrawnOnce(spoiled, sheet());
    EXPECT_EQ(std::ranges::count_if(
                  spoiled, [](const PaperBars::Bar& bar) { return bar.parts.front().crossed; }),
        1)
        << "what the spoiled piece took is crossed out on its own stick";
}

TEST(StickBars, SayBelowWhatFindsNoRoomInside) {
    Paper paper;
    PaperBars bars;
    const std::string names = "W1–W9, W11, W13, W17, W21–W25, W31, W33, W37, W41, W43, W47, W51";
    bars.bars = {{"1–9: 9 of 12 ft", 144,
                     {{12, "11 3/4", names, true, true}, {60, "60", "W2", true, true}}, "0"},
        {"10: 12 ft", 144, {{3, "2 1/2", "W3", false, false}}, "141"}};
    paper.blocks.emplace_back(bars);
    Device device;
    const PaperPainter painter(paper, *device);
    const QString all = textsOn(painter).join(u' ');
    EXPECT_TRUE(all.contains(u"60 W2"_s)) << all.toStdString();
    EXPECT_TRUE(all.contains(u"11 3/4: W1–W9, W11"_s)) << all.toStdString();
    EXPECT_TRUE(all.contains(u"W47, W51"_s)) << "to its end";
    EXPECT_TRUE(all.contains(u"2 1/2: W3"_s)) << all.toStdString();
}

TEST(StickBars, AreWrittenWholeAsATable) {
    PaperBars bars;
    bars.bars = {
        {"1, 2: 2 of 12 ft", 144, {{36, "36", "W1, W2", true, true}, {9, "gone", {}}}, "7"}};
    const PaperTable table = asTable(bars);
    ASSERT_EQ(table.rows.size(), 1U);
    EXPECT_EQ(table.rows[0].cells[0].text, "1, 2: 2 of 12 ft");
    EXPECT_EQ(table.rows[0].cells[1].text, "36 W1, W2 | gone");
    EXPECT_EQ(table.rows[0].cells[2].text, "7");
}
