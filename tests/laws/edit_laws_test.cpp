// SPDX-License-Identifier: GPL-3.0-or-later
// What must hold for every kind of Edit, whatever kinds of rows there are: driven by AnyRow and
// Describe.
#include "job/edit_json.h"
#include "support/every_edit.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class EditLaws : public testing::TestWithParam<std::uint32_t> {};

TEST_P(EditLaws, InverseRestoresTheBook) {
    Book book = randomBook(GetParam(), 3);
    const Book before = book;
    for (const Edit& edit : everyEdit(book, GetParam())) {
        ASSERT_TRUE(check(book, edit).ok()) << edit.sentence;
        apply(book, edit);
        EXPECT_NE(book, before) << edit.sentence;
        const Edit back = inverse(edit);
        ASSERT_TRUE(check(book, back).ok()) << edit.sentence;
        apply(book, back);
        ASSERT_EQ(book, before) << edit.sentence;
    }
}

TEST_P(EditLaws, InverseOfTheInverseIsTheEdit) {
    const Book book = randomBook(GetParam(), 2);
    for (const Edit& edit : everyEdit(book, GetParam()))
        EXPECT_EQ(inverse(inverse(edit)), edit) << edit.sentence;
}

TEST_P(EditLaws, AnEditIsRefusedWhenTheBookHoldsSomethingElse) {
    Book book = randomBook(GetParam(), 2);
    for (const Edit& edit : everyEdit(book, GetParam())) {
        apply(book, edit);
        const auto again = check(book, edit);
        ASSERT_FALSE(again.ok()) << edit.sentence;
        EXPECT_EQ(again.error().fault, Fault::conflict);
        apply(book, inverse(edit));
    }
}

TEST_P(EditLaws, ChangesComeBackFromJson) {
    const Book book = randomBook(GetParam(), 2);
    for (const Edit& edit : everyEdit(book, GetParam())) {
        const auto back = changesFromText(changesToText(edit.changes));
        ASSERT_TRUE(back.ok()) << edit.sentence << ": " << back.error().sentence;
        EXPECT_EQ(*back, edit.changes) << edit.sentence;
    }
}

INSTANTIATE_TEST_SUITE_P(Seeds, EditLaws, testing::Values(1, 2, 3));

TEST(EveryEdit, ChangesEveryFieldThatCanChange) {
    const Book book = randomBook(7, 3);
    std::size_t fields = 0;
    forEachRowKind([&]<class Row>(RowKind<Row>) {
        fields += fieldCount<Row> - (belowPlan<Row> ? 2 : 1); // id, and plan below a plan
        fields += 2;                                          // added, removed
    });
    EXPECT_EQ(everyEdit(book, 7).size(), fields);
}

} // namespace
} // namespace miterbook
