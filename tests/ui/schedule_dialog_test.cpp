// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/schedule_dialog.h"
#include "ui/ui_kit.h"

#include <QComboBox>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <gtest/gtest.h>

#include <fstream>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

class ScheduleDialogTest : public testing::Test {
protected:
    QString file(const std::string& words) {
        const QString path = m_folder.filePath(u"windows.csv"_s);
        std::ofstream(path.toStdString(), std::ios::binary) << words;
        return path;
    }

    UiKit m_kit;
    QTemporaryDir m_folder;
};

TEST_F(ScheduleDialogTest, BringsInTheGoodRowsAsOneEdit) {
    ScheduleDialog dialog(m_kit.desk(), ScheduleKind::windows, m_kit.plan());
    ASSERT_TRUE(dialog.readFile(file("Mark,Width,Height,Qty\nX1,36,60,1\nX2,36 1/0,60,1\n")));
    ASSERT_TRUE(dialog.reading());
    EXPECT_EQ(dialog.reading()->rows.size(), 1U);
    EXPECT_EQ(dialog.reading()->rejectedRows(), 1);
    dialog.bringIn();
    EXPECT_EQ(dialog.result(), QDialog::Accepted);
    ASSERT_NE(m_kit.openingOf("X1"), nullptr);
    EXPECT_EQ(m_kit.openingOf("X2"), nullptr);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(m_kit.openingOf("X1"), nullptr);
}

TEST_F(ScheduleDialogTest, AColumnIsMappedByHandAndRemembered) {
    const QString path = file("Mark,Opening breadth,Height\nX1,36,60\n");
    ScheduleDialog dialog(m_kit.desk(), ScheduleKind::windows, m_kit.plan());
    dialog.readFile(path);
    ASSERT_TRUE(dialog.reading());
    EXPECT_TRUE(dialog.reading()->rows.empty());
    QComboBox* choice = nullptr;
    for (QComboBox* box : dialog.findChildren<QComboBox*>()) {
        if (box->accessibleName().contains(u"Opening breadth"_s))
            choice = box;
    }
    ASSERT_NE(choice, nullptr);
    choice->setCurrentIndex(choice->findText(u"width"_s));
    Q_EMIT choice->activated(choice->currentIndex());
    ASSERT_EQ(dialog.reading()->rows.size(), 1U);
    dialog.bringIn();
    ASSERT_NE(m_kit.openingOf("X1"), nullptr);
    EXPECT_FALSE(m_kit.book().prices.of<HeaderName>().empty());
    QCoreApplication::processEvents();
}

TEST_F(ScheduleDialogTest, AMissingFileIsSaid) {
    ScheduleDialog dialog(m_kit.desk(), ScheduleKind::doors, m_kit.plan());
    EXPECT_FALSE(dialog.readFile(m_folder.filePath(u"nothing.csv"_s)));
    EXPECT_FALSE(dialog.reading());
}

} // namespace
} // namespace miterbook
