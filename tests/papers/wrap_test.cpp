// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/sample_job.h"
#include "papers/set_text.h"
#include "printing/printable_text.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

/// No text begins left of the page or ends right of it.
void expectInside(const Paper& paper, PageSize size) {
    Device device(size);
    const PaperPainter painter(paper, *device);
    const PaperFonts fonts(paper.type, *device);
    for (int page = 0; page < painter.pageCount(); ++page) {
        for (const TextMark& mark : textsOf(painter.set().page(page))) {
            EXPECT_GE(mark.at.x(), -1.0) << mark.text.toStdString();
            EXPECT_LE(mark.at.x() + fonts.width(mark.role, mark.text), device.area().width() + 1.0)
                << mark.text.toStdString();
        }
    }
}

SampleJob longNames() {
    SampleJob job;
    const std::string endless(400, 'W');
    job.shop().name = "Quillfeather Trim and " + endless;
    job.builder().name = endless + " Homes";
    job.figures.whole.rooms.front().name = endless;
    job.figures.setup.scope = endless;
    job.figures.estimate.problems = {endless};
    job.figures.buy.problems = {endless};
    job.figures.takeoff.pieces.front().part = endless;
    job.refresh();
    return job;
}

} // namespace

TEST(Wrap, LongNamesStayOnThePage) {
    const SampleJob job = longNames();
    for (const PageSize size : {PageSize::letter, PageSize::a4}) {
        for (const auto build : {bidPaper, takeoffPaper, orderPaper}) {
            Paper paper = build(job.houseJob(), job.figures);
            expectInside(paper, size);
            paper.type = Paper::Type::wall;
            expectInside(paper, size);
        }
    }
}

TEST(Wrap, AHugeCellRunsOverPagesWhole) {
    Paper paper;
    PaperTable table;
    table.columns = {{"Text"}, {"n", PaperColumn::Align::right}};
    std::string words;
    for (int i = 0; i < 9000; ++i)
        words += "w" + std::to_string(i) + ' ';
    table.rows.push_back({PaperTable::Kind::plain, {Cell::of(words), Cell::of("1")}});
    paper.blocks.emplace_back(table);
    Device device;
    const PaperPainter painter(paper, *device);
    EXPECT_GT(painter.pageCount(), 2);
    QStringList found;
    for (int page = 0; page < painter.pageCount(); ++page) {
        for (const TextMark& mark : textsOf(painter.set().page(page))) {
            if (mark.text.startsWith(QLatin1Char('w')))
                found += mark.text.split(QLatin1Char(' '));
        }
    }
    ASSERT_EQ(found.size(), 9000);
    EXPECT_EQ(found.last(), QStringLiteral("w8999"));
}

TEST(Wrap, PrintableIsOneHarmlessLine) {
    EXPECT_EQ(printable("a\nb\tc"), QStringLiteral("a b c"));
    EXPECT_EQ(printable("<img src='x'>"), QStringLiteral("<img src='x'>"));
    EXPECT_EQ(printable("a\xE2\x80\xAE"
                        "b"),
        QStringLiteral("a b")); // right-to-left override
    EXPECT_EQ(printable("\xFF"), QString(QChar(QChar::ReplacementCharacter)));
}

TEST(Wrap, WallPapersAreSetLarger) {
    Device device;
    const PaperFonts office(Paper::Type::office, *device);
    const PaperFonts wall(Paper::Type::wall, *device);
    EXPECT_GT(wall.lineHeight(TextRole::body), 1.5 * office.lineHeight(TextRole::body));
    EXPECT_DOUBLE_EQ(wall.hairline(), office.hairline());
    EXPECT_GT(office.font(TextRole::body).pointSizeF(), 8.0);
    EXPECT_EQ(office.font(TextRole::body).pixelSize(), -1);
}
