// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/result.h"

#include <gtest/gtest.h>
#include <memory>

namespace miterbook {

namespace {

Result<int> half(int number) {
    if (number % 2 != 0)
        return badInput("An odd number.");
    return number / 2;
}

TEST(Result, HoldsAValueOrASentence) {
    ASSERT_TRUE(half(6).ok());
    EXPECT_EQ(*half(6), 3);
    const auto refused = half(7);
    ASSERT_FALSE(refused);
    EXPECT_EQ(refused.error(), (Error{Fault::badInput, "An odd number."}));
    EXPECT_EQ(refused.valueOr(-1), -1);
    EXPECT_EQ(half(8).valueOr(-1), 4);
}

TEST(Result, MovesAValueOut) {
    Result<std::unique_ptr<int>> made(std::make_unique<int>(5));
    const std::unique_ptr<int> taken = std::move(made).value();
    ASSERT_NE(taken, nullptr);
    EXPECT_EQ(*taken, 5);
}

TEST(Result, AnErrorIsNotAValueEvenWhereTheValueIsText) {
    const Result<std::string> text(std::string("fine"));
    const Result<std::string> fault(Error{Fault::notFound, "No such plan."});
    EXPECT_EQ(*text, "fine");
    EXPECT_FALSE(fault.ok());
    EXPECT_EQ(fault.error().fault, Fault::notFound);
}

TEST(Result, OfNothingIsDoneOrAnError) {
    const Result<void> done;
    const Result<void> failed(Error{Fault::storage, "The disk is full."});
    EXPECT_TRUE(done.ok());
    ASSERT_FALSE(failed);
    EXPECT_EQ(failed.error().sentence, "The disk is full.");
}

} // namespace

} // namespace miterbook
