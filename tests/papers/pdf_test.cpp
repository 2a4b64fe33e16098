// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/paper_list.h"
#include "papers/sample_job.h"
#include "printing/pdf.h"

#include <QBuffer>
#include <QFile>
#include <QImage>
#include <QProcess>
#include <QTemporaryDir>

#include <gmock/gmock.h>

#include <algorithm>
#include <sstream>

using namespace miterbook;
using testing::HasSubstr;
using testing::Not;

namespace {

/// What a program says; poppler-utils must be there.
std::string said(const char* program, const QStringList& arguments) {
    QProcess process;
    process.start(QString::fromLatin1(program), arguments);
    if (!process.waitForFinished(60'000) || process.exitCode() != 0)
        ADD_FAILURE() << program
                      << " did not run: " << process.readAllStandardError().toStdString();
    return process.readAllStandardOutput().toStdString();
}

Result<void> write(const Paper& paper, PageSize size, const QString& path) {
    return writePdf(paper, size, path);
}

/// Rows enough for many pages.
Paper longPaper(int rows) {
    Paper paper;
    paper.title = "Takeoff";
    paper.footer = "Takeoff  ·  The Juniper";
    PaperTable table;
    table.columns.resize(6, PaperColumn{"Column"});
    for (int i = 0; i < rows; ++i) {
        PaperTable::Row row;
        for (int k = 0; k < 6; ++k)
            row.cells.push_back(Cell::of("r" + std::to_string(i) + "c" + std::to_string(k)));
        table.rows.push_back(std::move(row));
    }
    paper.blocks.emplace_back(std::move(table));
    return paper;
}

} // namespace

TEST(Pdf, EachPaperReadsAsItSays) {
    const QTemporaryDir folder;
    const SampleJob job;
    for (const PaperKind& kind : paperKinds) {
        const QString path = folder.filePath(QStringLiteral("paper.pdf"));
        const Paper paper = kind.build(job.houseJob(), job.figures);
        if (paper.type == Paper::Type::labels)
            continue; // a sheet of labels bears nothing else
        ASSERT_TRUE(write(paper, PageSize::letter, path));
        const std::string text = said(
            "pdftotext", {QStringLiteral("-layout"), path, QStringLiteral("-")});
        EXPECT_THAT(text, HasSubstr("Quillfeather Trim"));
        EXPECT_THAT(text, HasSubstr(paper.title));
        if (!kind.ofShop && !kind.ofSet) {
            EXPECT_THAT(text, HasSubstr("Fennel Creek 14"));
        }
        EXPECT_THAT(text, HasSubstr("Page 1 of "));
        for (const auto& [what, fact] : paper.facts)
            EXPECT_THAT(text, HasSubstr(what));
    }
}

TEST(Pdf, ABidShowsItsPriceAndNoCost) {
    const QTemporaryDir folder;
    const SampleJob job;
    const QString path = folder.filePath(QStringLiteral("bid.pdf"));
    const Paper paper = bidPaper(job.houseJob(), job.figures);
    ASSERT_TRUE(write(paper, PageSize::a4, path));
    const std::string text = said(
        "pdftotext", {QStringLiteral("-layout"), path, QStringLiteral("-")});
    EXPECT_THAT(text, HasSubstr(paper.totals.front().second.text));
    for (const WorkTotal& work : job.figures.estimate.works) {
        EXPECT_THAT(text, Not(HasSubstr(std::to_string(work.labour.cents() % 100'000))));
        EXPECT_THAT(text, Not(HasSubstr(std::to_string(work.profit.cents()))));
    }
    EXPECT_THAT(text, Not(HasSubstr("61.37")));
}

TEST(Pdf, FontsAreEmbedded) {
    const QTemporaryDir folder;
    const SampleJob job;
    const QString path = folder.filePath(QStringLiteral("bid.pdf"));
    ASSERT_TRUE(write(bidPaper(job.planJob(), job.figures), PageSize::letter, path));
    const std::string fonts = said("pdffonts", {path});
    // Two lines of heads, then one for each font: a plain and a bold.
    std::istringstream lines(fonts);
    std::string line;
    std::getline(lines, line);
    const std::size_t embedded = line.find("emb");
    ASSERT_NE(embedded, std::string::npos) << fonts;
    std::getline(lines, line);
    int count = 0;
    for (; std::getline(lines, line); ++count)
        EXPECT_EQ(line.substr(embedded, 3), "yes") << line;
    EXPECT_GE(count, 2);
}

TEST(Pdf, PagesHaveTheSizeAsked) {
    const QTemporaryDir folder;
    const SampleJob job;
    const QString path = folder.filePath(QStringLiteral("order.pdf"));
    const Paper paper = orderPaper(job.planJob(), job.figures);
    ASSERT_TRUE(write(paper, PageSize::letter, path));
    EXPECT_THAT(said("pdfinfo", {path}), HasSubstr("612 x 792 pts"));
    ASSERT_TRUE(write(paper, PageSize::a4, path));
    EXPECT_THAT(said("pdfinfo", {path}), HasSubstr("(A4)"));
}

TEST(Pdf, LongPapersKeepEveryRow) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("long.pdf"));
    ASSERT_TRUE(write(longPaper(1000), PageSize::letter, path));
    const std::string text = said("pdftotext", {path, QStringLiteral("-")});
    for (int i = 0; i < 1000; ++i)
        EXPECT_THAT(text, HasSubstr("r" + std::to_string(i) + "c5"));
    EXPECT_THAT(text, HasSubstr("Page 2 of"));
}

TEST(Pdf, HostileNamesAreOnlyText) {
    const QTemporaryDir folder;
    SampleJob job;
    job.builder().name = "<img src='/etc/hostname'><b>=cmd()</b>";
    job.refresh();
    const QString path = folder.filePath(QStringLiteral("bid.pdf"));
    ASSERT_TRUE(write(bidPaper(job.planJob(), job.figures), PageSize::letter, path));
    std::string text = said("pdftotext", {path, QStringLiteral("-")});
    std::erase_if(text, [](char c) { return c == '\n' || c == ' '; });
    EXPECT_THAT(text, HasSubstr("<imgsrc='/etc/hostname'><b>=cmd()</b>"));
    EXPECT_THAT(said("pdfimages", {QStringLiteral("-list"), path}), Not(HasSubstr("image")));
}

TEST(Pdf, SaysWhereItCannotBeWritten) {
    const QTemporaryDir folder;
    const SampleJob job;
    const QString path = folder.filePath(QStringLiteral("no/such/folder/bid.pdf"));
    const Result<void> written = write(
        bidPaper(job.planJob(), job.figures), PageSize::letter, path);
    ASSERT_FALSE(written);
    EXPECT_EQ(written.error().fault, Fault::storage);
    EXPECT_THAT(written.error().sentence, HasSubstr("no/such/folder/bid.pdf"));
}

TEST(Pdf, AFileThatIsThereIsReplacedWhole) {
    const QTemporaryDir folder;
    const SampleJob job;
    const QString path = folder.filePath(QStringLiteral("bid.pdf"));
    QFile old(path);
    ASSERT_TRUE(old.open(QIODevice::WriteOnly));
    old.write(QByteArray(2'000'000, 'x'));
    old.close();
    ASSERT_TRUE(write(bidPaper(job.planJob(), job.figures), PageSize::letter, path));
    ASSERT_TRUE(old.open(QIODevice::ReadOnly));
    const QByteArray bytes = old.readAll();
    EXPECT_TRUE(bytes.startsWith("%PDF-"));
    EXPECT_LT(bytes.size(), 1'000'000);
}

TEST(Pdf, BearsTheShopsLogoOnOfficePapersAlone) {
    const QTemporaryDir folder;
    const QString path = folder.filePath(QStringLiteral("logo.pdf"));
    QImage image(300, 150, QImage::Format_RGB32);
    image.fill(Qt::darkGreen);
    QByteArray png;
    QBuffer buffer(&png);
    ASSERT_TRUE(buffer.open(QIODevice::WriteOnly));
    ASSERT_TRUE(image.save(&buffer, "PNG"));
    Paper paper = longPaper(3);
    paper.letterhead = {"Ridge Trim"};
    const auto pictures = [&] {
        EXPECT_TRUE(write(paper, PageSize::letter, path));
        // Two lines of titles, then one for each picture.
        const std::string list = said("pdfimages", {QStringLiteral("-list"), path});
        return std::ranges::count(list, '\n') - 2;
    };
    EXPECT_EQ(pictures(), 0);
    paper.logo = {"sum", Bytes(png.toStdString())};
    EXPECT_EQ(pictures(), 1);
    paper.type = Paper::Type::wall;
    EXPECT_EQ(pictures(), 0);
    paper.type = Paper::Type::office;
    paper.logo.content = Bytes("no picture");
    EXPECT_EQ(pictures(), 0) << "a picture that cannot be read is left off";
}
