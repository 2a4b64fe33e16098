// SPDX-License-Identifier: GPL-3.0-or-later
// The shop's logo: taken from a file, shown, left off, undone; a file that is no picture is
// refused.
#include "windows/logo_form.h"

#include "ui/ui_kit.h"

#include <QFile>
#include <QImage>
#include <QPushButton>
#include <QTemporaryDir>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class LogoFormTest : public testing::Test {
protected:
    LogoFormTest()
        : m_form(m_kit.desk()) {}

    QString file(const QString& name, const QByteArray& bytes) {
        const QString path = m_folder.filePath(name);
        QFile out(path);
        EXPECT_TRUE(out.open(QIODevice::WriteOnly));
        out.write(bytes);
        return path;
    }
    QString picture(const QString& name, QSize size, QColor colour) {
        QImage image(size, QImage::Format_RGB32);
        image.fill(colour);
        const QString path = m_folder.filePath(name);
        EXPECT_TRUE(image.save(path));
        return path;
    }
    const Logo* logo() const {
        const PriceBook& prices = m_kit.book().prices;
        return prices.of<Logo>().find(prices.shop().logo);
    }

    UiKit m_kit;
    LogoForm m_form;
    QTemporaryDir m_folder;
};

TEST_F(LogoFormTest, TakesAPictureAndLeavesItOff) {
    EXPECT_EQ(logo(), nullptr);
    ASSERT_TRUE(m_form.takeFile(picture(u"a.png"_s, {200, 100}, Qt::red)));
    ASSERT_NE(logo(), nullptr);
    EXPECT_EQ(logo()->name, "a.png");
    ASSERT_TRUE(m_form.takeFile(picture(u"b.jpg"_s, {200, 100}, Qt::blue)));
    EXPECT_EQ(logo()->name, "b.jpg");
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(logo()->name, "a.png");
    QPushButton* leave = m_form.findChildren<QPushButton*>().back();
    ASSERT_TRUE(leave->isEnabled());
    leave->click();
    EXPECT_EQ(logo(), nullptr);
    EXPECT_FALSE(leave->isEnabled());
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(logo()->name, "a.png");
}

TEST_F(LogoFormTest, MakesALargePictureFitForPaper) {
    ASSERT_TRUE(m_form.takeFile(picture(u"large.png"_s, {6000, 3000}, Qt::green)));
    const auto kept = QImage::fromData(QByteArray::fromStdString(logo()->content.content()));
    EXPECT_LE(kept.width(), 1600);
    EXPECT_LE(kept.height(), 480);
    EXPECT_NEAR(double(kept.width()) / kept.height(), 2, 0.02);
    EXPECT_LE(logo()->content.size(), Logo::mostBytes);
}

TEST_F(LogoFormTest, ADrawingBecomesAPicture) {
    const auto made = letterheadPicture(file(u"a.svg"_s,
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
        "width='40' height='20'><image xlink:href='file:///etc/passwd' width='9' height='9'/>"
        "<rect width='40' height='20' fill='#884400'/></svg>"));
    if (!made)
        GTEST_SKIP() << "no reader of drawings here: " << made.error().sentence;
    EXPECT_EQ(made->type, "image/png");
    EXPECT_EQ(QImage::fromData(made->bytes).pixelColor(5, 5), QColor(0x88, 0x44, 0x00));
}

TEST_F(LogoFormTest, RefusesWhatIsNoPicture) {
    EXPECT_FALSE(m_form.takeFile(file(u"letter.png"_s, "Dear builder")));
    EXPECT_TRUE(m_kit.refused().contains(u"\"letter.png\" cannot be read as a picture"_s));
    const QByteArray whole = [&] {
        QFile in(picture(u"c.png"_s, {300, 300}, Qt::red));
        EXPECT_TRUE(in.open(QIODevice::ReadOnly));
        return in.readAll();
    }();
    EXPECT_FALSE(m_form.takeFile(file(u"half.png"_s, whole.left(40))));
    EXPECT_FALSE(m_form.takeFile(m_folder.filePath(u"none.png"_s)));
    EXPECT_EQ(logo(), nullptr);
}

} // namespace
} // namespace miterbook
