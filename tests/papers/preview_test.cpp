// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/sample_job.h"
#include "printing/page_size.h"
#include "printing/paper_painter.h"
#include "printing/preview_dialog.h"

#include <QAction>
#include <QComboBox>
#include <QFile>
#include <QImage>
#include <QLabel>
#include <QPrintPreviewWidget>
#include <QPrinter>
#include <QTemporaryDir>
#include <QToolBar>

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

bool hasInk(const QImage& image) {
    for (int y = 0; y < image.height(); y += 2) {
        for (int x = 0; x < image.width(); x += 2) {
            if (qGray(image.pixel(x, y)) < 60)
                return true;
        }
    }
    return false;
}

} // namespace

TEST(Preview, ShowsThePaperInTheShopsSize) {
    const SampleJob job;
    PreviewDialog dialog(takeoffPaper(job.houseJob(), job.figures), PageSize::a4);
    dialog.show();
    auto* preview = dialog.findChild<QPrintPreviewWidget*>();
    ASSERT_NE(preview, nullptr);
    preview->updatePreview();
    EXPECT_GE(preview->pageCount(), 2);
    EXPECT_EQ(dialog.pageSize(), PageSize::a4);
    EXPECT_TRUE(hasInk(preview->grab().toImage()));
}

TEST(Preview, TheSizeCanBeChanged) {
    const SampleJob job;
    PreviewDialog dialog(bidPaper(job.planJob(), job.figures), PageSize::letter);
    auto* sizes = dialog.findChild<QComboBox*>();
    ASSERT_NE(sizes, nullptr);
    EXPECT_EQ(sizes->currentText(), QStringLiteral("Letter"));
    sizes->setCurrentIndex(sizes->findText(QStringLiteral("A4")));
    EXPECT_EQ(dialog.pageSize(), PageSize::a4);
}

TEST(Preview, EveryControlHasAName) {
    const SampleJob job;
    PreviewDialog dialog(bidPaper(job.planJob(), job.figures), PageSize::letter);
    for (const QComboBox* box : dialog.findChildren<QComboBox*>())
        EXPECT_FALSE(box->accessibleName().isEmpty());
    const auto* bar = dialog.findChild<QToolBar*>();
    ASSERT_NE(bar, nullptr);
    EXPECT_FALSE(bar->windowTitle().isEmpty());
    qsizetype named = 0;
    for (const QAction* action : bar->actions())
        named += action->text().isEmpty() ? 0 : 1;
    EXPECT_EQ(named, 8);
    EXPECT_FALSE(dialog.findChild<QPrintPreviewWidget*>()->accessibleName().isEmpty());
}

TEST(Preview, PagesTurn) {
    const SampleJob job;
    PreviewDialog dialog(takeoffPaper(job.houseJob(), job.figures), PageSize::letter);
    dialog.show();
    auto* preview = dialog.findChild<QPrintPreviewWidget*>();
    preview->updatePreview();
    for (QAction* action : dialog.findChildren<QAction*>()) {
        if (action->text() == QStringLiteral("&Next page"))
            action->trigger();
    }
    EXPECT_EQ(preview->currentPage(), 2);
}

TEST(Printer, PrintsOnlyThePagesAsked) {
    const QTemporaryDir folder;
    const SampleJob job;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(QStringLiteral("some.pdf")));
    setPage(printer, PageSize::letter);
    const PaperPainter painter(takeoffPaper(job.houseJob(), job.figures), printer);
    ASSERT_GE(painter.pageCount(), 2);
    ASSERT_TRUE(painter.paint({2, 2}));
    QFile file(folder.filePath(QStringLiteral("some.pdf")));
    ASSERT_TRUE(file.open(QIODevice::ReadOnly));
    EXPECT_EQ(file.readAll().count("/Type /Page\n"), 1);
}

TEST(PaperBelow, IsPaintedOnWhatIsLeftOfTheLastPage) {
    const SampleJob job;
    for (const Paper& paper : {takeoffPaper(job.houseJob(), job.figures), Paper{}}) {
        QTemporaryDir folder;
        QPrinter printer(QPrinter::HighResolution);
        printer.setOutputFormat(QPrinter::PdfFormat);
        printer.setOutputFileName(folder.filePath(QStringLiteral("paper.pdf")));
        setPage(printer, PageSize::letter);
        int times = 0;
        QRectF room;
        const PaperPainter painter(paper, printer, [&](QPainter&, const QRectF& left) {
            ++times;
            room = left;
        });
        ASSERT_TRUE(painter.paint().ok());
        EXPECT_EQ(times, 1) << painter.pageCount() << " pages";
        double lowest = 0;
        for (const PlacedBlock& placed : painter.set().page(painter.pageCount() - 1))
            lowest = std::max(lowest, placed.top + placed.block->height);
        EXPECT_GE(room.top(), lowest);
        EXPECT_GE(room.height(), 0);
        EXPECT_LT(room.bottom(), painter.set().footer(0).height) << "above the footer";
    }
}

TEST(PaperBelow, IsNotOnAPrintOfEarlierPages) {
    const SampleJob job;
    QTemporaryDir folder;
    QPrinter printer(QPrinter::HighResolution);
    printer.setOutputFormat(QPrinter::PdfFormat);
    printer.setOutputFileName(folder.filePath(QStringLiteral("paper.pdf")));
    setPage(printer, PageSize::letter);
    int times = 0;
    const PaperPainter painter(takeoffPaper(job.houseJob(), job.figures), printer,
        [&](QPainter&, const QRectF&) { ++times; });
    ASSERT_GE(painter.pageCount(), 2);
    ASSERT_TRUE(painter.paint({1, 1}).ok());
    EXPECT_EQ(times, 0);
}
