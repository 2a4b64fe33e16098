// SPDX-License-Identifier: GPL-3.0-or-later
// What hangs at the saw: approved texts, and that drawings and labels are set where they belong.
#include "job/cut_figures.h"
#include "papers/cut_sample.h"
#include "papers/paper_list.h"
#include "papers/set_text.h"
#include "papers/write_paper.h"
#include "printing/pdf.h"
#include "support/approved_text.h"
#include "support/level_house.h"

#include <algorithm>
#include <map>

using namespace miterbook;
using namespace Qt::Literals::StringLiterals;

namespace {

std::vector<LineMark> linesOf(const SetPage& page) {
    std::vector<LineMark> lines;
    for (const PlacedBlock& placed : page) {
        for (const Mark& mark : placed.block->marks) {
            if (const auto* line = std::get_if<LineMark>(&mark))
                lines.push_back(*line);
        }
    }
    return lines;
}

} // namespace

class CutPaper : public testing::TestWithParam<std::string_view> {};

TEST_P(CutPaper, OfAHouse) {
    const CutSample sample;
    const Paper paper = findPaper(GetParam())->build(sample.job(), sample.figures);
    const std::string name(GetParam());
    expectApproved(paperText(paper), name + ".saw.txt");
    expectApproved(paperCsv(paper), name + ".saw.csv");
    expectApproved(paperJson(paper), name + ".saw.json");
    const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES"); // for the eye
    if (!folder.isEmpty()) {
        const QString file = folder + QLatin1Char('/') + QString::fromStdString(name)
            + QStringLiteral(".pdf");
        EXPECT_TRUE(writePdf(paper, PageSize::letter, file).ok());
    }
}

TEST_P(CutPaper, OfALevel) {
    const CutSample sample;
    const Paper paper = findPaper(GetParam())->build(sample.job(sample.upper), sample.figures);
    expectApproved(paperText(paper), std::string(GetParam()) + ".saw-level.txt");
}

TEST_P(CutPaper, InMillimetres) {
    CutSample sample;
    Shop shop = sample.book.prices.shop();
    shop.unit = LengthUnit::millimetres;
    sample.book.prices.of<Shop>().put(shop);
    sample.refresh();
    const Paper paper = findPaper(GetParam())->build(sample.job(), sample.figures);
    expectApproved(paperText(paper), std::string(GetParam()) + ".saw-metric.txt");
}

INSTANTIATE_TEST_SUITE_P(Papers, CutPaper,
    testing::Values("measure", "saw-sheet", "sticks", "labels", "assembly"), [](const auto& paper) {
        std::string name(paper.param);
        std::ranges::replace(name, '-', '_');
        return name;
    });

class LevelPapers : public testing::TestWithParam<PageSize> {};

TEST_P(LevelPapers, SawSheetBeginsWithASettingAndIsFewPages) {
    const LevelHouse house(26, 18);
    const JobFigures figures = house.figures();
    const Paper paper = sawSheetPaper(house.job(), figures);
    Device device(GetParam());
    const PaperPainter painter(paper, *device);
    EXPECT_LE(painter.pageCount(), 4);
    const SawSheet sheet = cutFiguresFor(house.book, figures).sheet;
    std::map<QString, int> numbers; // settings are the numbers in large type at the left edge
    for (int page = 0; page < painter.pageCount(); ++page) {
        for (const TextMark& mark : textsOf(painter.set().page(page))) {
            bool isNumber = false;
            mark.text.toInt(&isNumber);
            if (mark.role == TextRole::heading && isNumber
                && mark.at.x() < device.area().width() / 10) {
                ++numbers[mark.text];
            }
        }
        if (page == 0) {
            EXPECT_GE(numbers.size(), 2U) << "the first page is more than a heading";
        }
    }
    EXPECT_EQ(numbers.size(), sheet.stops.size());
    for (const auto& [number, times] : numbers)
        EXPECT_EQ(times, 1) << number.toStdString();
    const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES"); // for the eye
    if (!folder.isEmpty()) {
        for (const PaperKind& kind : paperKinds) {
            const QString file = folder + u"/level-"_s
                + QString::fromStdString(std::string(kind.name)) + u'-'
                + QString::fromStdString(std::string(word(GetParam()))) + u".pdf"_s;
            if (kind.byLevel) {
                EXPECT_TRUE(writePdf(kind.build(house.job(), figures), GetParam(), file).ok());
            }
        }
    }
}

TEST_P(LevelPapers, SheetsWithBasesAndCrownsKeepTheirNumbers) {
    const LevelHouse house(26, 18, 9);
    const Paper paper = sawSheetPaper(house.job(), house.figures());
    Device device(GetParam());
    const PaperPainter painter(paper, *device);
    EXPECT_LE(painter.pageCount(), 12);
    const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES"); // for the eye
    if (!folder.isEmpty()) {
        const QString file = folder + u"/rooms-"_s
            + QString::fromStdString(std::string(word(GetParam()))) + u".pdf"_s;
        EXPECT_TRUE(writePdf(paper, GetParam(), file).ok());
    }
}

INSTANTIATE_TEST_SUITE_P(Sizes, LevelPapers, testing::Values(PageSize::letter, PageSize::a4),
    [](const auto& size) { return std::string(word(size.param)); });

TEST(TableBelow, StandsUnderItsRowOverTheWholeWidth) {
    Paper paper;
    PaperTable table;
    table.columns = {{"No.", PaperColumn::Align::right, 5},
        {"Set to", PaperColumn::Align::right, 9}, {"For", PaperColumn::Align::left, 20}};
    table.columns[1].strong = true;
    table.columns[2].below = true;
    table.rows.push_back(
        {PaperTable::Kind::plain, {Cell::of("1"), Cell::of("36 3/8"), Cell::of("W1, W2")}});
    table.rows.push_back({PaperTable::Kind::plain, {Cell::of("2"), Cell::of("24"), Cell::of("")}});
    paper.blocks.emplace_back(std::move(table));
    Device device;
    const PaperPainter painter(paper, *device);
    const std::vector<TextMark> texts = textsOf(painter.set().page(0));
    const auto of = [&](const QString& text) {
        const auto it = std::ranges::find(texts, text, &TextMark::text);
        EXPECT_NE(it, texts.end()) << text.toStdString();
        return it == texts.end() ? TextMark() : *it;
    };
    EXPECT_EQ(of(u"36 3/8"_s).role, TextRole::heading);
    EXPECT_EQ(of(u"1"_s).at.y(), of(u"36 3/8"_s).at.y()) << "one baseline";
    EXPECT_GT(of(u"For: W1, W2"_s).at.y(), of(u"1"_s).at.y());
    EXPECT_LT(of(u"For: W1, W2"_s).at.y(), of(u"2"_s).at.y());
    EXPECT_EQ(std::ranges::count(texts, u"For"_s, &TextMark::text), 0) << "it has no head";
}

TEST(StickBars, AreDrawnToOneScale) {
    Paper paper;
    PaperBars bars;
    bars.bars = {{"1", 168, {{84, "84", {}, false, false, false}}, "0"},
        {"2", 84, {{42, "42", {}, false, false, false}}, "0"}};
    paper.blocks.emplace_back(bars);
    Device device;
    const PaperPainter painter(paper, *device);
    double longest = 0;
    std::vector<double> across;
    for (const LineMark& line : linesOf(painter.set().page(0))) {
        if (line.from.y() == line.to.y())
            longest = std::max(longest, line.to.x() - line.from.x());
        else
            across.push_back(line.from.x());
    }
    const double scale = longest / 168;
    for (const double at : {84.0, 42.0})
        EXPECT_TRUE(std::ranges::any_of(across, [&](double x) {
            return std::abs(x - at * scale) < 1;
        })) << at;
}

TEST(LabelSheets, LieWhereTheSheetsAreDieCut) {
    Paper paper;
    paper.type = Paper::Type::labels;
    PaperLabels labels;
    for (int i = 0; i < 31; ++i)
        labels.labels.push_back({"W" + std::to_string(i), {"36 3/8"}, true});
    paper.blocks.emplace_back(labels);
    Device device;
    const PaperPainter painter(paper, *device);
    ASSERT_EQ(painter.pageCount(), 2); // thirty on a sheet
    const double dots = (*device).logicalDpiX() / 72.0;
    const QPointF corner
        = (*device).pageLayout().paintRectPixels((*device).logicalDpiX()).topLeft();
    const std::vector<TextMark> texts = textsOf(painter.set().page(0));
    const auto of
        = [&](const QString& name) { return *std::ranges::find(texts, name, &TextMark::text); };
    // Second column begins a label and a gap after the first; second row one label lower.
    EXPECT_NEAR(of(u"W1"_s).at.x() - of(u"W0"_s).at.x(), (189 + 9) * dots, 0.5);
    EXPECT_NEAR(of(u"W3"_s).at.y() - of(u"W0"_s).at.y(), 72 * dots, 0.5);
    EXPECT_NEAR(of(u"W0"_s).at.x() + corner.x(), (13.5 + 5) * dots, 0.5);
    EXPECT_TRUE(painter.set().footer(0).marks.empty());
}
