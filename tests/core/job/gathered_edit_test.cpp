// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/gathered_edit.h"

#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

Builder builder(std::int64_t id, std::string name) {
    Builder row;
    row.id = Id<Builder>(id);
    row.name = std::move(name);
    return row;
}

Edit put(const Book& book, Builder row) {
    return putEdit(book, "Step", std::move(row));
}

TEST(GatheredEdit, EachStepSeesTheOnesBefore) {
    const Book book = smallBook();
    GatheredEdit all(book);
    ASSERT_TRUE(all.add(put(all.book(), builder(901, "First"))).ok());
    EXPECT_EQ(all.book().prices.of<Builder>().find(Id<Builder>(901))->name, "First");
    ASSERT_TRUE(all.add(put(all.book(), builder(901, "Second"))).ok());
    const Edit edit = std::move(all).take("Both");
    EXPECT_EQ(edit.sentence, "Both");
    ASSERT_EQ(edit.changes.size(), 1U); // the row was changed twice and is put once
    EXPECT_FALSE(edit.changes[0].before.has_value());
    EXPECT_EQ(edit.changes[0].after->as<Builder>()->name, "Second");
    EXPECT_TRUE(check(book, edit).ok());
}

TEST(GatheredEdit, WhatIsUndoneAgainIsNoChange) {
    const Book book = smallBook();
    GatheredEdit all(book);
    ASSERT_TRUE(all.add(put(all.book(), builder(901, "First"))).ok());
    ASSERT_TRUE(all.add(EditBuilder(all.book(), "Away").remove(Id<Builder>(901)).take()).ok());
    EXPECT_TRUE(std::move(all).take("Nothing").empty());
}

TEST(GatheredEdit, AStepThatDoesNotFitIsLeftOut) {
    const Book book = smallBook();
    GatheredEdit all(book);
    const Edit stale = put(book, builder(901, "First"));
    ASSERT_TRUE(all.add(stale).ok());
    EXPECT_FALSE(all.add(stale).ok()); // it says there is no such row yet
    EXPECT_EQ(std::move(all).take("One").changes.size(), 1U);
}

} // namespace
} // namespace miterbook
