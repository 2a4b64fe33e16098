// SPDX-License-Identifier: GPL-3.0-or-later
// Pictures of figures on paper: black on white whatever the screen's colours are.
#include "charts/bar_picture.h"
#include "charts/line_picture.h"
#include "printing/preview_dialog.h"
#include "ui/ui_kit.h"

#include <QAction>
#include <QApplication>
#include <QFile>
#include <QImage>
#include <QPainter>
#include <QProcess>
#include <QTemporaryDir>
#include <QTimer>
#include <QToolButton>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

constexpr Date firstDay{std::chrono::year(2026), std::chrono::March, std::chrono::day(2)};

void fill(LinePicture& picture) {
    picture.setLines(u"Hours of the house"_s, u"hours"_s,
        {{u"used"_s, PictureLine::Look::line,
             {{firstDay, 0}, {addDays(firstDay, 2), 14}, {addDays(firstDay, 4), 31}}},
            {u"bid"_s, PictureLine::Look::dashed, {{firstDay, 40}, {addDays(firstDay, 4), 40}}},
            {u"at completion"_s, PictureLine::Look::dotted,
                {{firstDay, 46}, {addDays(firstDay, 4), 46}}}},
        {u"nine times in ten"_s, {firstDay, addDays(firstDay, 4)}, {38, 42}, {50, 49}},
        u"31 of 40 hours bid are used."_s);
}

void fill(BarPicture& picture) {
    picture.setBars(u"profit per man-hour, by plan"_s, u"profit"_s, u"over zero"_s, u"under zero"_s,
        {{u"Larkspur 2400"_s, 21.5, u"$21.50"_s}, {u"<b>Wren</b>"_s, -4, u"-$4.00"_s}});
}

/// The picture alone on white paper of 8 in by 6 in at 100 dots an inch.
QImage printed(const ChartPicture& picture) {
    QImage paper(800, 600, QImage::Format_RGB32);
    paper.setDotsPerMeterX(3937);
    paper.setDotsPerMeterY(3937);
    paper.fill(Qt::white);
    QPainter painter(&paper);
    picture.paintOn(painter, QRectF(0, 0, 800, 600));
    painter.end();
    const QString folder = qEnvironmentVariable("MITERBOOK_PICTURES");
    if (!folder.isEmpty())
        paper.save(folder + u"/printed-"_s
            + QString::fromLatin1(picture.metaObject()->className() + 11) + u".png"_s);
    return paper;
}

bool isGrey(QRgb pixel) {
    const int least = std::min({qRed(pixel), qGreen(pixel), qBlue(pixel)});
    return std::max({qRed(pixel), qGreen(pixel), qBlue(pixel)}) - least < 12;
}

struct Ink {
    int dark = 0;
    int coloured = 0;
    int all = 0;
};

Ink inkOf(const QImage& image) {
    Ink ink;
    for (int y = 0; y < image.height(); ++y) {
        for (int x = 0; x < image.width(); ++x) {
            const QRgb pixel = image.pixel(x, y);
            ++ink.all;
            ink.dark += qGray(pixel) < 110 ? 1 : 0;
            ink.coloured += isGrey(pixel) ? 0 : 1;
        }
    }
    return ink;
}

template <class Picture>
class PrintedPicture : public testing::Test {};

using Pictures = testing::Types<LinePicture, BarPicture>;
TYPED_TEST_SUITE(PrintedPicture, Pictures);

TYPED_TEST(PrintedPicture, IsDrawnInGreyOnWhite) {
    TypeParam picture(u"A picture"_s);
    fill(picture);
    const QImage paper = printed(picture);
    const Ink ink = inkOf(paper);
    EXPECT_GT(ink.dark, ink.all / 400) << "something is drawn";
    EXPECT_LT(ink.dark, ink.all / 2) << "on white";
    EXPECT_EQ(ink.coloured, 0);
    EXPECT_EQ(paper.pixelColor(3, 3), QColor(Qt::white));
}

TYPED_TEST(PrintedPicture, IsTheSameFromADarkDesktop) {
    TypeParam light(u"A picture"_s);
    fill(light);
    TypeParam dark(u"A picture"_s);
    QPalette night;
    night.setColor(QPalette::Base, Qt::black);
    night.setColor(QPalette::Text, Qt::white);
    dark.setPalette(night);
    fill(dark);
    EXPECT_EQ(printed(light), printed(dark));
}

TYPED_TEST(PrintedPicture, IsAsHighAsTwoThirdsOfItsWidthOrItsRoom) {
    TypeParam picture(u"A picture"_s);
    fill(picture);
    QImage paper(800, 1200, QImage::Format_RGB32);
    paper.fill(Qt::white);
    QPainter painter(&paper);
    picture.paintOn(painter, QRectF(0, 200, 800, 1000));
    painter.end();
    EXPECT_EQ(inkOf(paper.copy(0, 0, 800, 200)).dark, 0) << "nothing above its room";
    EXPECT_EQ(inkOf(paper.copy(0, 730, 800, 470)).dark, 0) << "not over two thirds";
    EXPECT_GT(inkOf(paper.copy(0, 200, 800, 530)).dark, 500);
}

TYPED_TEST(PrintedPicture, HasAButtonOnlyWhereThereIsSomethingToPrintItFor) {
    UiKit kit;
    TypeParam picture(u"A picture"_s);
    fill(picture);
    picture.resize(700, 400);
    picture.show();
    auto* button = picture.template findChild<QToolButton*>();
    ASSERT_NE(button, nullptr);
    EXPECT_FALSE(button->isVisible());
    EXPECT_FALSE(picture.savePdf(u"/nowhere.pdf"_s).ok());
    picture.printFor([&] { return PaperJob{kit.book(), {}, {}, {}, firstDay}; });
    EXPECT_TRUE(button->isVisible());
    EXPECT_FALSE(button->accessibleName().isEmpty());
    EXPECT_LE(button->geometry().right(), picture.width());
}

TYPED_TEST(PrintedPicture, IsSavedOnASheetOfTheShop) {
    UiKit kit;
    TypeParam picture(u"A picture"_s);
    fill(picture);
    picture.printFor([&] { return PaperJob{kit.book(), {}, {}, {}, firstDay}; });
    QTemporaryDir folder;
    const QString path = folder.filePath(u"picture.pdf"_s);
    ASSERT_TRUE(picture.savePdf(path).ok());
    QProcess process;
    process.start(u"pdftotext"_s, {u"-layout"_s, path, u"-"_s});
    ASSERT_TRUE(process.waitForFinished(60'000));
    const QString words = QString::fromUtf8(process.readAllStandardOutput());
    EXPECT_TRUE(words.simplified().contains(picture.title().last(12), Qt::CaseInsensitive))
        << words.toStdString();
    EXPECT_TRUE(words.contains(u"Page 1 of 1"_s)) << words.toStdString();
    const QString folderOfPictures = qEnvironmentVariable("MITERBOOK_PICTURES");
    if (!folderOfPictures.isEmpty())
        QFile::copy(path,
            folderOfPictures + u'/' + QString::fromLatin1(picture.metaObject()->className() + 11)
                + u".pdf"_s);
    const auto failed = picture.savePdf(folder.filePath(u"no/such/folder.pdf"_s));
    ASSERT_FALSE(failed.ok());
    EXPECT_NE(failed.error().sentence.find("Could not write"), std::string::npos);
}

TYPED_TEST(PrintedPicture, IsPreviewedLikeAPaper) {
    UiKit kit;
    TypeParam picture(u"A picture"_s);
    fill(picture);
    picture.printFor([&] { return PaperJob{kit.book(), {}, {}, {}, firstDay}; });
    bool seen = false;
    QTimer::singleShot(0, qApp, [&] {
        auto* dialog = qobject_cast<PreviewDialog*>(QApplication::activeModalWidget());
        ASSERT_TRUE(dialog);
        seen = true;
        EXPECT_EQ(dialog->windowTitle().toLower(), picture.title().toLower());
        EXPECT_EQ(dialog->pageSize(), kit.book().prices.shop().page);
        dialog->reject();
    });
    picture.preview();
    EXPECT_TRUE(seen);
}

TEST(PictureWithout, AnythingToPrintForShowsNoPreview) {
    BarPicture picture(u"A picture"_s);
    picture.preview();
    EXPECT_EQ(QApplication::activeModalWidget(), nullptr);
}

} // namespace
} // namespace miterbook
