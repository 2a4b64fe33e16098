// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/desk.h"

#include "basics/sha256.h"
#include "ui/ui_kit.h"

#include <QCoreApplication>

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class DeskTest : public testing::Test {
protected:
    Length widthOfW1() const { return m_kit.openingOf("W1")->width; }
    /// Gives window W1 another width.
    void widen(Length width) {
        Opening opening = *m_kit.openingOf("W1");
        opening.width = width;
        ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Revise window W1", opening)));
    }
    /// Lets what was put off to the next turn of the event loop happen.
    static void turn() { QCoreApplication::processEvents(); }
    QUndoStack& list() { return m_kit.desk().undoStack(); }

    UiKit m_kit;
    Length m_first = widthOfW1();
    Length m_second = m_first + Length::inches(2);
};

TEST_F(DeskTest, AnUndoThatCannotBeWrittenCanBeTriedAgain) {
    widen(m_second);
    m_kit.keeper().failWith("The disk is full.");
    list().undo();
    turn();
    EXPECT_EQ(m_kit.refused().toStdString(), "The disk is full.");
    EXPECT_EQ(widthOfW1(), m_second);
    EXPECT_TRUE(list().canUndo());
    EXPECT_FALSE(list().canRedo());
    m_kit.keeper().failWith({});
    list().undo();
    turn();
    EXPECT_EQ(widthOfW1(), m_first);
    EXPECT_TRUE(list().canRedo());
}

TEST_F(DeskTest, ARedoThatCannotBeWrittenCanBeTriedAgain) {
    widen(m_second);
    list().undo();
    m_kit.keeper().failWith("The disk is full.");
    list().redo();
    turn();
    EXPECT_EQ(widthOfW1(), m_first);
    EXPECT_TRUE(list().canRedo());
    EXPECT_FALSE(list().canUndo());
    m_kit.keeper().failWith({});
    list().redo();
    turn();
    EXPECT_EQ(widthOfW1(), m_second);
    EXPECT_EQ(m_kit.keeper().writes(), 3); // there, back, there again: none for the failures
}

TEST_F(DeskTest, AnUndoThatTheBookDoesNotAllowDropsOut) {
    IssuedPaper paper;
    paper.id = m_kit.desk().ids().next<IssuedPaper>();
    paper.plan = m_kit.plan();
    paper.number = 1;
    paper.date = m_kit.desk().clock().today();
    paper.paper.text = "As given out of hand";
    paper.sum = sha256(paper.paper.text);
    ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Issue", paper)));
    list().undo();
    turn();
    EXPECT_TRUE(m_kit.refused().contains(QStringLiteral("stays as it is")))
        << m_kit.refused().toStdString();
    EXPECT_TRUE(m_kit.book().sheet(m_kit.plan()).of<IssuedPaper>().contains(paper.id));
    EXPECT_EQ(list().count(), 0);
}

TEST_F(DeskTest, AnEmptyEditIsDoneAndLeavesNoTrace) {
    EXPECT_TRUE(m_kit.desk().perform(Edit{"Nothing", {}}));
    EXPECT_EQ(list().count(), 0);
    EXPECT_EQ(m_kit.keeper().writes(), 0);
}

TEST_F(DeskTest, ARefusedEditChangesNothingAndIsNotListed) {
    Opening opening = *m_kit.openingOf("W1");
    opening.width = Length::feet(400);
    EXPECT_FALSE(m_kit.desk().perform(putEdit(m_kit.book(), "Revise window W1", opening)));
    EXPECT_FALSE(m_kit.refused().isEmpty());
    EXPECT_EQ(widthOfW1(), m_first);
    EXPECT_EQ(list().count(), 0);
}

} // namespace
} // namespace miterbook
