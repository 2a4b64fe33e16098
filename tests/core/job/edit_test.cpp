// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/workbook.h"
#include "support/memory_keeper.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class EditTest : public testing::Test {
protected:
    Stick stick() const { return *m_book.prices.of<Stick>().find(Id<Stick>(21)); }
    Book m_book = smallBook();
};

TEST_F(EditTest, PuttingARowAsItIsChangesNothing) {
    EXPECT_TRUE(putEdit(m_book, "Nothing", stick()).empty());
}

TEST_F(EditTest, ASecondPutReplacesTheFirst) {
    Stick once = stick();
    once.price = Money::cents(1);
    Stick twice = stick();
    twice.price = Money::cents(2);
    const Edit edit = EditBuilder(m_book, "Price").put(once).put(twice).take();
    ASSERT_EQ(edit.changes.size(), 1U);
    EXPECT_EQ(edit.changes[0].after->as<Stick>()->price, Money::cents(2));
    EXPECT_EQ(*edit.changes[0].before->as<Stick>(), stick());
    EXPECT_TRUE(EditBuilder(m_book, "Back").put(once).put(stick()).take().empty());
}

TEST_F(EditTest, RemovingWhatIsNotThereChangesNothing) {
    EXPECT_TRUE(EditBuilder(m_book, "Remove").remove(Id<Stick>(99)).take().empty());
}

TEST_F(EditTest, TheInverseGoesBackwards) {
    Stick changed = stick();
    changed.price = Money::cents(5);
    const Edit edit = EditBuilder(m_book, "Both").put(changed).remove(Id<Opening>(43)).take();
    const Edit back = inverse(edit);
    ASSERT_EQ(back.changes.size(), 2U);
    EXPECT_FALSE(back.changes[0].before.has_value());
    EXPECT_EQ(*back.changes[1].after->as<Stick>(), stick());
}

TEST_F(EditTest, ANewPlanIsOpen) {
    Plan plan;
    plan.id = Id<Plan>(70);
    plan.name = "Birch";
    const Edit edit = putEdit(m_book, "Add plan", plan);
    apply(m_book, edit);
    EXPECT_TRUE(m_book.isOpen(plan.id));
    apply(m_book, inverse(edit));
    EXPECT_EQ(m_book, smallBook());
}

TEST_F(EditTest, AFailedWriteLeavesMemoryAsItWas) {
    MemoryKeeper keeper(m_book);
    auto workbook = Workbook::open(keeper);
    const Book before = workbook->book();
    Stick changed = stick();
    changed.price = Money::cents(5);
    keeper.failWith("The disk is full.");
    const auto done = workbook->perform(putEdit(workbook->book(), "Price", changed));
    ASSERT_FALSE(done.ok());
    EXPECT_EQ(done.error().sentence, "The disk is full.");
    EXPECT_EQ(workbook->book(), before);
    keeper.failWith("");
    EXPECT_TRUE(workbook->perform(putEdit(workbook->book(), "Price", changed)).ok());
    EXPECT_EQ(keeper.kept().prices, workbook->book().prices);
}

TEST_F(EditTest, APlanThatIsGoneCannotBeOpened) {
    MemoryKeeper keeper(m_book);
    auto workbook = Workbook::open(keeper);
    EXPECT_EQ(workbook->openPlan(Id<Plan>(99)).error().fault, Fault::notFound);
}

} // namespace
} // namespace miterbook
