// SPDX-License-Identifier: GPL-3.0-or-later
// Builders' sheets, good and bad: each bad one gives a sentence, soon, and takes bounded memory.
#include "stages/plan/sheets/dxf_lines.h"
#include "stages/plan/sheets/plan_sheets.h"
#include "stages/plan/sheets/sheet_gestures.h"
#include "ui/ui_kit.h"

#include <QBuffer>
#include <QPainter>
#include <QPdfWriter>
#include <QTest>

#include <gmock/gmock.h>

#include <random>

namespace miterbook {
namespace {

using testing::HasSubstr;

std::string pdfOf(int pages) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    {
        QPdfWriter writer(&buffer);
        writer.setPageSize(QPageSize(QSizeF(864, 648), QPageSize::Point)); // 12 x 9 in
        writer.setPageMargins({});
        writer.setResolution(72);
        QPainter painter(&writer);
        for (int i = 0; i < pages; ++i) {
            if (i > 0)
                writer.newPage();
            painter.fillRect(QRect(100, 100, 300, 200), Qt::black);
        }
    }
    return bytes.toStdString();
}

std::string pngOf(const QImage& image) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    EXPECT_TRUE(image.save(&buffer, "PNG"));
    return bytes.toStdString();
}

/// A PDF of one page with a media box and, if wanted, an encryption that no empty password opens.
std::string rawPdf(const std::string& box, bool locked) {
    std::string text = "%PDF-1.4\n";
    std::vector<std::size_t> places;
    const auto object = [&](const std::string& body) {
        places.push_back(text.size());
        text += std::to_string(places.size()) + " 0 obj\n" + body + "\nendobj\n";
    };
    object("<< /Type /Catalog /Pages 2 0 R >>");
    object("<< /Type /Pages /Kids [3 0 R] /Count 1 >>");
    object("<< /Type /Page /Parent 2 0 R /MediaBox [" + box + "] >>");
    if (locked)
        object("<< /Filter /Standard /V 1 /R 2 /P -4 /O <" + std::string(64, '1') + "> /U <"
            + std::string(64, '2') + "> >>");
    const std::size_t table = text.size();
    text += "xref\n0 " + std::to_string(places.size() + 1) + "\n0000000000 65535 f \n";
    for (const std::size_t at : places) {
        const std::string digits = std::to_string(at);
        text += std::string(10 - digits.size(), '0') + digits + " 00000 n \n";
    }
    text += "trailer << /Root 1 0 R /Size " + std::to_string(places.size() + 1);
    if (locked)
        text += " /Encrypt 4 0 R /ID [<00112233445566778899aabbccddeeff> "
                "<00112233445566778899aabbccddeeff>]";
    return text + " >>\nstartxref\n" + std::to_string(table) + "\n%%EOF\n";
}

std::string refusal(const std::string& content, int page = 1) {
    const auto opened = openSheet("A1.pdf", Bytes(content), page);
    return opened ? "" : opened.error().sentence;
}

TEST(Sheet, PdfPageIsDrawnInParts) {
    const auto opened = openSheet("A1.pdf", Bytes(pdfOf(2)), 2);
    ASSERT_TRUE(opened.ok()) << opened.error().sentence;
    EXPECT_EQ(opened->pages, 2);
    EXPECT_EQ(opened->page->size(), QSizeF(864, 648));
    const QImage part = opened->page->draw(QRectF(90, 90, 100, 100), {200, 200}, {});
    ASSERT_EQ(part.size(), QSize(200, 200));
    EXPECT_EQ(part.pixelColor(5, 5), QColor(Qt::white)); // 2.5 points in: outside of the black
    EXPECT_EQ(part.pixelColor(150, 150), QColor(Qt::black));
}

TEST(Sheet, BadPdfsAreSaid) {
    EXPECT_EQ(refusal(pdfOf(2), 3), "A1.pdf has no page 3; it has 2.");
    EXPECT_EQ(refusal(rawPdf("0 0 600 400", false)), "");
    EXPECT_THAT(refusal(rawPdf("0 0 600 400", true)), HasSubstr("is locked with a password"));
    EXPECT_THAT(refusal(rawPdf("0 0 900000000 900000000", false)), HasSubstr("too large"));
    EXPECT_THAT(refusal("%PDF-1.7\nthis is no PDF at all"), HasSubstr("PDF"));
    EXPECT_EQ(refusal(""), "A1.pdf is empty.");
    std::mt19937 random(5);
    const std::string good = pdfOf(1);
    for (int i = 0; i < 60;
         ++i) { // cut short and with bytes changed: a sentence or a page, no more
        std::string bad = good.substr(0, random() % good.size());
        for (int k = 0; k < 20 && !bad.empty(); ++k)
            bad[random() % bad.size()] = static_cast<char>(random());
        const auto opened = openSheet("A1.pdf", Bytes(bad), 1);
        if (opened) {
            (void)opened->page->draw(QRectF(0, 0, 600, 400), {256, 256}, {});
        } else {
            EXPECT_FALSE(opened.error().sentence.empty());
        }
    }
}

TEST(Sheet, APageOfManyInchesTakesNoMoreThanItsTiles) {
    const auto opened = openSheet("A1.pdf", Bytes(rawPdf("0 0 14400 14400", false)), 1);
    ASSERT_TRUE(opened.ok());
    SheetTiles tiles(opened->page);
    QImage screen(800, 600, QImage::Format_RGB32);
    for (int i = 0; i < 60; ++i) {
        QPainter painter(&screen);
        QTransform way;
        way.translate(-i * 700.0, -i * 500.0);
        way.scale(6, 6);
        tiles.paint(painter, way, QRectF(0, 0, 800, 600), i % 2 == 1);
        painter.end();
        QTest::qWait(5);
        EXPECT_LE(tiles.kept(), SheetTiles::mostTiles);
    }
    QTRY_VERIFY(tiles.kept() > 0);
}

TEST(Sheet, PicturesAreDrawnAndTooLargeOnesSaid) {
    QImage image(300, 200, QImage::Format_RGB32);
    image.fill(Qt::white);
    image.setPixelColor(150, 100, Qt::black);
    image.setDotsPerMeterX(3937);
    const auto opened = openSheet("A1.png", Bytes(pngOf(image)), 1);
    ASSERT_TRUE(opened.ok());
    EXPECT_EQ(opened->page->size(), QSizeF(300, 200));
    EXPECT_NEAR(opened->page->unitOnPaper().toInches(), 0.01, 1e-5); // 100 dots to the inch
    const QImage part = opened->page->draw(QRectF(148, 98, 4, 4), {40, 40}, {});
    EXPECT_LT(part.pixelColor(25, 25).lightness(), 60);

    QImage huge(20'000, 20'000, QImage::Format_Mono);
    huge.fill(1);
    const std::string content = pngOf(huge);
    EXPECT_EQ(refusal(content),
        "A1.pdf has 20000 x 20000 dots; pictures of up to 40 million dots are taken: save it "
        "smaller, or as a PDF.");
    EXPECT_THAT(refusal(content.substr(0, 3000)), HasSubstr("dots"));
    EXPECT_THAT(refusal(pngOf(image).substr(0, 60)), HasSubstr("broken picture"));
    EXPECT_EQ(refusal("GIF89a and so on"), "A1.pdf is no PDF, PNG, JPEG or DXF.");
}

std::string dxf(const std::string& entities) {
    return "0\nSECTION\n2\nHEADER\n9\n$INSUNITS\n70\n1\n0\nENDSEC\n0\nSECTION\n2\nENTITIES\n"
        + entities + "0\nENDSEC\n0\nEOF\n";
}

std::string dxfLine(const std::string& x, const std::string& y) {
    return "0\nLINE\n8\n0\n10\n0\n20\n0\n11\n" + x + "\n21\n" + y + "\n";
}

TEST(Sheet, DxfLinesArcsAndBlocksAreRead) {
    const auto lines = readDxfLines(dxf(dxfLine("120", "96")), 1000);
    ASSERT_TRUE(lines.ok()) << lines.error().sentence;
    ASSERT_EQ(lines->lines.size(), 1U);
    EXPECT_EQ(lines->lines[0].p2(), QPointF(120, 96));
    EXPECT_EQ(lines->units, 1);
    const auto circle = readDxfLines(dxf("0\nCIRCLE\n8\n0\n10\n5\n20\n5\n40\n2\n"), 1000);
    ASSERT_TRUE(circle.ok());
    EXPECT_EQ(circle->lines.size(), 48U);
    const auto opened = openSheet("A1.dxf", Bytes(dxf(dxfLine("120", "96"))), 1);
    ASSERT_TRUE(opened.ok());
    EXPECT_EQ(opened->page->unitInHouse(), Length::inches(1));
    EXPECT_EQ(opened->page->size().toSize(), QSize(120, 96));
}

TEST(Sheet, RubbishDxfIsSaidSoon) {
    EXPECT_THAT(refusal(dxf("")), HasSubstr("has no lines that can be drawn"));
    EXPECT_THAT(refusal(dxf(dxfLine("nan", "1e300"))), HasSubstr("A1.pdf"));
    std::string many;
    for (int i = 0; i < 1200; ++i)
        many += dxfLine(std::to_string(i), "7");
    EXPECT_FALSE(readDxfLines(dxf(many), 1000).ok());
    // A block that is made of itself, many times over.
    std::string block = "0\nSECTION\n2\nBLOCKS\n0\nBLOCK\n8\n0\n2\nA\n10\n0\n20\n0\n"
        + dxfLine("1", "1");
    for (int i = 0; i < 40; ++i)
        block += "0\nINSERT\n8\n0\n2\nA\n10\n1\n20\n1\n";
    block += "0\nENDBLK\n0\nENDSEC\n";
    const auto nested = readDxfLines(
        block + dxf("0\nINSERT\n8\n0\n2\nA\n10\n0\n20\n0\n"), mostLines);
    if (nested) {
        EXPECT_LE(nested->lines.size(), mostLines);
    } else {
        EXPECT_THAT(nested.error().sentence, HasSubstr("more lines than can be shown"));
    }
    std::mt19937 random(9);
    for (int i = 0; i < 100; ++i) {
        std::string text = dxf(many).substr(0, random() % 20'000);
        for (int k = 0; k < 50 && !text.empty(); ++k)
            text[random() % text.size()] = static_cast<char>(random());
        (void)openSheet("A1.dxf", Bytes(text), 1);
    }
}

TEST(Sheet, IsCopiedIntoTheBookOnceAndTakenAway) {
    UiKit kit;
    const Id<Level> level = kit.book().sheet(kit.plan()).of<Level>().begin()->first;
    const NewSheet sheet{"A1.pdf", Bytes(pdfOf(1)), 1, Length::inches(1)};
    for (int i = 0; i < 2; ++i) {
        const auto edit = sheetAdded(kit.book(), kit.desk().ids(), kit.plan(), level, sheet, {});
        ASSERT_TRUE(edit.ok() && kit.desk().perform(*edit)) << kit.refused().toStdString();
    }
    const PlanRows& rows = kit.book().sheet(kit.plan());
    EXPECT_EQ(rows.of<SheetFile>().size(), 1U);
    EXPECT_EQ(rows.of<Underlay>().size(), 2U);
    while (!rows.of<Underlay>().empty())
        ASSERT_TRUE(
            kit.desk().perform(sheetRemoved(kit.book(), rows.of<Underlay>().begin()->second)));
    EXPECT_TRUE(rows.of<SheetFile>().empty());
    kit.desk().undoStack().undo();
    EXPECT_EQ(rows.of<SheetFile>().size(), 1U);
    NewSheet large = sheet;
    large.content = Bytes(std::string(largestSheet + 1, 'x'));
    const auto refused = sheetAdded(kit.book(), kit.desk().ids(), kit.plan(), level, large, {});
    ASSERT_FALSE(refused.ok());
    EXPECT_THAT(refused.error().sentence, HasSubstr("up to 25 MB"));
}

TEST(Sheet, IsReadInTheBackgroundAndSaysWhatIsWrong) {
    UiKit kit;
    const Id<Level> level = kit.book().sheet(kit.plan()).of<Level>().begin()->first;
    PlanSheets sheets(kit.desk());
    sheets.setLevel(kit.plan(), level);
    EXPECT_FALSE(sheets.isShown());
    const auto lay = [&](const std::string& content) {
        const NewSheet sheet{"A1.pdf", Bytes(content), 1, Length::inches(1)};
        const auto edit = sheetAdded(kit.book(), kit.desk().ids(), kit.plan(), level, sheet, {});
        ASSERT_TRUE(edit.ok() && kit.desk().perform(*edit));
    };
    lay(pdfOf(1));
    EXPECT_TRUE(sheets.isShown());
    QTRY_VERIFY(sheets.pageOf(*sheets.current()) != nullptr);
    EXPECT_EQ(sheets.bounds().toRect().size(), QSize(864, 648));
    lay(rawPdf("0 0 600 400", true));
    QTRY_VERIFY(sheets.trouble().contains(QStringLiteral("locked")));
}

} // namespace
} // namespace miterbook
