// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/text.h"
#include "stages/plan/plan_tables.h"
#include "ui/ui_kit.h"
#include "widgets/data_table.h"
#include "widgets/table_proxy.h"

#include <QApplication>
#include <QClipboard>
#include <QLineEdit>
#include <QTest>

#include <gtest/gtest.h>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {
namespace {

/// The windows table of the sample plan, worked with keys.
class DataTableTest : public testing::Test {
protected:
    DataTableTest()
        : m_tables(m_kit.desk()) {
        m_tables.setTarget({m_kit.plan(), {}});
        m_tables.resize(1200, 600);
        m_tables.show();
        m_tables.activateWindow(); // keys reach actions in the active window only
        EXPECT_TRUE(QTest::qWaitForWindowActive(&m_tables));
        m_table = m_tables.currentTable();
        m_table->setFocus();
    }

    int rows() const { return m_table->cells().realRows(); }
    void press(int key, Qt::KeyboardModifiers modifiers = {}) {
        QTest::keyClick(m_table, Qt::Key(key), modifiers);
    }

    UiKit m_kit;
    PlanTables m_tables;
    DataTable* m_table = nullptr;
};

TEST_F(DataTableTest, AWindowIsTypedWithTheKeyboardAlone) {
    const int before = rows();
    const Book book = m_kit.book();
    press(Qt::Key_Insert, Qt::ControlModifier);
    ASSERT_EQ(m_table->currentIndex().row(), before);
    goTo(*m_table, before, u"Width"_s);
    typeCell(*m_table, u"2'11 1/2"_s, Qt::Key_Tab);
    ASSERT_EQ(rows(), before + 1) << m_kit.refused().toStdString();
    EXPECT_EQ(m_table->currentIndex().row(), before) << "the cursor stays in the new row";
    EXPECT_EQ(m_table->currentIndex().column(), columnOf(*m_table, u"Height"_s));
    typeCell(*m_table, u"60"_s, Qt::Key_Tab);
    typeCell(*m_table, u"2"_s, Qt::Key_Tab);
    EXPECT_EQ(cellText(*m_table, before, u"Mark"_s), u"W12"_s) << "the next mark is given";
    EXPECT_EQ(cellText(*m_table, before, u"Width"_s), u"35 1/2"_s);
    EXPECT_EQ(cellText(*m_table, before, u"Height"_s), u"60"_s);
    EXPECT_EQ(cellText(*m_table, before, u"Count"_s), u"2"_s);
    EXPECT_EQ(m_kit.desk().undoStack().count(), 3);
    while (m_kit.desk().undoStack().canUndo())
        m_kit.desk().undoStack().undo();
    EXPECT_EQ(m_kit.book(), book);
    while (m_kit.desk().undoStack().canRedo())
        m_kit.desk().undoStack().redo();
    EXPECT_EQ(cellText(*m_table, before, u"Width"_s), u"35 1/2"_s);
}

TEST_F(DataTableTest, TypingBeginsAnEditAndEnterGoesDown) {
    goTo(*m_table, 0, u"Width"_s);
    QTest::keyClick(m_table, Qt::Key_4);
    QLineEdit* editor = editorOf(*m_table);
    ASSERT_NE(editor, nullptr);
    EXPECT_EQ(editor->text(), u"4"_s) << "what was there is typed over";
    QTest::keyClicks(editor, u"0"_s);
    QTest::keyClick(editor, Qt::Key_Return);
    QApplication::processEvents();
    EXPECT_EQ(cellText(*m_table, 0, u"Width"_s), u"40"_s);
    EXPECT_EQ(m_table->currentIndex().row(), 1);
    press(Qt::Key_Return, Qt::ShiftModifier);
    EXPECT_EQ(m_table->currentIndex().row(), 0);
}

TEST_F(DataTableTest, ABadLengthStaysInTheEditor) {
    const int writes = m_kit.keeper().writes();
    goTo(*m_table, 0, u"Width"_s);
    typeCell(*m_table, u"36 1/0"_s);
    QLineEdit* editor = editorOf(*m_table);
    ASSERT_NE(editor, nullptr) << "the editor stays open";
    EXPECT_EQ(editor->text(), u"36 1/0"_s);
    EXPECT_TRUE(m_kit.refused().contains(u"36 1/0"_s)) << m_kit.refused().toStdString();
    EXPECT_EQ(m_kit.keeper().writes(), writes);
    typeCell(*m_table, u"400'"_s);
    EXPECT_NE(editorOf(*m_table), nullptr);
    typeCell(*m_table, u"36 1/2"_s);
    EXPECT_EQ(editorOf(*m_table), nullptr);
    EXPECT_EQ(cellText(*m_table, 0, u"Width"_s), u"36 1/2"_s);
}

TEST_F(DataTableTest, EscapeTakesBackABadText) {
    goTo(*m_table, 0, u"Width"_s);
    const QString before = cellText(*m_table, 0, u"Width"_s);
    typeCell(*m_table, u"-5"_s);
    ASSERT_NE(editorOf(*m_table), nullptr);
    QTest::keyClick(editorOf(*m_table), Qt::Key_Escape);
    QApplication::processEvents();
    EXPECT_EQ(editorOf(*m_table), nullptr);
    EXPECT_EQ(cellText(*m_table, 0, u"Width"_s), before);
}

TEST_F(DataTableTest, TabPastTheEndGoesToTheNextRow) {
    goTo(*m_table, 0, u"Note"_s);
    press(Qt::Key_Tab);
    EXPECT_EQ(m_table->currentIndex().row(), 1);
    EXPECT_EQ(m_table->currentIndex().column(), columnOf(*m_table, u"Mark"_s));
    press(Qt::Key_Backtab, Qt::ShiftModifier);
    EXPECT_EQ(m_table->currentIndex().row(), 0);
}

TEST_F(DataTableTest, ThreeRowsFromASpreadsheet) {
    const int before = rows();
    QGuiApplication::clipboard()->setText(
        u"A1\t36\t60\t1\r\nA2\t3'-0\"\t48 1/2\t2\r\nA3\t2436\t\t1\r\n"_s);
    goTo(*m_table, before, u"Mark"_s);
    press(Qt::Key_V, Qt::ControlModifier);
    ASSERT_EQ(rows(), before + 3) << m_kit.refused().toStdString();
    EXPECT_EQ(m_kit.desk().undoStack().count(), 1) << "one gesture";
    EXPECT_EQ(m_kit.openingOf("A2")->height, Length::sixteenths(48 * 16 + 8));
    EXPECT_EQ(m_kit.openingOf("A2")->count, 2);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(rows(), before);
}

TEST_F(DataTableTest, ABadCellPastesNothing) {
    const int before = rows();
    QGuiApplication::clipboard()->setText(u"A1\t36\t60\nA2\twide\t60\n"_s);
    goTo(*m_table, before, u"Mark"_s);
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_EQ(rows(), before);
    EXPECT_TRUE(m_kit.refused().contains(u"Row 2 of what was copied, column Width"_s))
        << m_kit.refused().toStdString();
}

TEST_F(DataTableTest, WhatIsCopiedIsPastedAsItWas) {
    m_table->setCurrentIndex(m_table->proxy().index(0, columnOf(*m_table, u"Width"_s)));
    m_table->selectionModel()->select(
        QItemSelection(m_table->proxy().index(0, columnOf(*m_table, u"Width"_s)),
            m_table->proxy().index(1, columnOf(*m_table, u"Height"_s))),
        QItemSelectionModel::ClearAndSelect);
    press(Qt::Key_C, Qt::ControlModifier);
    const QString copied = QGuiApplication::clipboard()->text();
    EXPECT_EQ(copied.count(u'\t'), 2);
    EXPECT_EQ(copied.count(u'\n'), 2);
    press(Qt::Key_V, Qt::ControlModifier);
    EXPECT_FALSE(m_kit.desk().undoStack().canUndo()) << "the same texts are no change";
}

TEST_F(DataTableTest, DeleteClearsAndWholeRowsGo) {
    const int before = rows();
    const std::string mark = utf8(cellText(*m_table, 0, u"Mark"_s));
    m_table->selectRow(0);
    press(Qt::Key_Delete);
    EXPECT_EQ(rows(), before - 1);
    EXPECT_EQ(m_kit.openingOf(mark), nullptr);
    m_kit.desk().undoStack().undo();
    EXPECT_EQ(rows(), before);
    ASSERT_NE(m_kit.openingOf(mark), nullptr);
    goTo(*m_table, 0, u"Height"_s);
    press(Qt::Key_Delete);
    EXPECT_EQ(m_kit.openingOf(mark)->height, Length());
}

TEST_F(DataTableTest, FillDownAndCopyRow) {
    const int width = columnOf(*m_table, u"Width"_s);
    goTo(*m_table, 0, u"Width"_s);
    m_table->selectionModel()->select(
        QItemSelection(m_table->proxy().index(0, width), m_table->proxy().index(2, width)),
        QItemSelectionModel::ClearAndSelect);
    m_table->fillDown();
    EXPECT_EQ(cellText(*m_table, 2, u"Width"_s), cellText(*m_table, 0, u"Width"_s));
    const int before = rows();
    goTo(*m_table, 0, u"Mark"_s);
    press(Qt::Key_D, Qt::ControlModifier | Qt::ShiftModifier);
    ASSERT_EQ(rows(), before + 1) << m_kit.refused().toStdString();
    EXPECT_EQ(cellText(*m_table, before, u"Width"_s), cellText(*m_table, 0, u"Width"_s));
    EXPECT_NE(cellText(*m_table, before, u"Mark"_s), cellText(*m_table, 0, u"Mark"_s));
}

TEST_F(DataTableTest, FindsAndSortsWithTheBlankRowLast) {
    m_table->proxy().setFind(u"w10"_s);
    EXPECT_EQ(m_table->proxy().rowCount(), 2) << "W10 and the blank row";
    m_table->proxy().setFind({});
    m_table->sortByColumn(columnOf(*m_table, u"Mark"_s), Qt::DescendingOrder);
    EXPECT_EQ(cellText(*m_table, 0, u"Mark"_s), u"W11"_s) << "numbers sort as numbers";
    const int last = m_table->proxy().rowCount() - 1;
    EXPECT_EQ(m_table->proxy().mapToSource(m_table->proxy().index(last, 0)).row(),
        m_table->cells().blankRow());
}

TEST_F(DataTableTest, ALongTextDoesNotLoseAChoice) {
    goTo(*m_table, 0, u"Trim style"_s);
    typeCell(*m_table, u"butt"_s);
    EXPECT_EQ(cellText(*m_table, 0, u"Trim style"_s), u"butted head"_s);
    goTo(*m_table, 0, u"Trim style"_s);
    typeCell(*m_table, u"fancy"_s);
    EXPECT_NE(editorOf(*m_table), nullptr);
    EXPECT_TRUE(m_kit.refused().contains(u"picture frame"_s)) << "the sentence names the choices";
}

} // namespace
} // namespace miterbook
