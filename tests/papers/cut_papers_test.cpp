// SPDX-License-Identifier: GPL-3.0-or-later
// What hangs at the saw: approved texts, and that drawings and labels are set where they belong.
#include "papers/cut_sample.h"
#include "papers/paper_list.h"
#include "papers/set_text.h"
#include "papers/write_paper.h"
#include "printing/pdf.h"
#include "support/approved_text.h"

#include <algorithm>

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
        const QString file = folder + QLatin1Char('/') + QString::fromStdString(name) + QStringLiteral(".pdf");
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

TEST(StickBars, AreDrawnToOneScale) {
    Paper paper;
    PaperBars bars;
    bars.bars = {{"1", 168, {{84, "84", false, false, false}}, "0"},
        {"2", 84, {{42, "42", false, false, false}}, "0"}};
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
