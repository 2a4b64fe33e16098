// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/bill/bill_kit.h"

#include "bill/extra_price.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

Extra asked() {
    Extra extra;
    extra.id = Id<Extra>(1);
    extra.title = "Shelf over the desk";
    return extra;
}

} // namespace

TEST(Extra, GoesStepByStep) {
    const auto priced = pricedExtra(asked(), Money::dollars(180));
    ASSERT_TRUE(priced);
    EXPECT_TRUE(lacksApproval(*priced));
    EXPECT_FALSE(isAgreed(*priced));
    const auto approved = approvedExtra(*priced, "R. Haas", day(3));
    ASSERT_TRUE(approved);
    EXPECT_TRUE(isAgreed(*approved));
    EXPECT_EQ(approved->approvedBy, "R. Haas");
    const auto done = doneExtra(*approved, day(5));
    ASSERT_TRUE(done);
    const auto billed = billedExtra(*done);
    ASSERT_TRUE(billed);
    EXPECT_EQ(unbilledExtra(*billed)->state, ExtraState::done);
    EXPECT_EQ(droppedExtra(*approved)->state, ExtraState::dropped);
}

TEST(Extra, IsNotDoneBeforeItIsApproved) {
    const Extra priced = pricedExtra(asked(), Money::dollars(180)).value();
    EXPECT_EQ(doneExtra(priced, day(5)).error().sentence,
        "The extra \"Shelf over the desk\" is priced and cannot become done.");
    EXPECT_FALSE(approvedExtra(asked(), "R. Haas", day(3))) << "without a price";
    EXPECT_EQ(approvedExtra(priced, " ", day(3)).error().sentence,
        "Say who approved the extra \"Shelf over the desk\".");
    EXPECT_FALSE(approvedExtra(priced, "R. Haas", noDate));
    EXPECT_FALSE(billedExtra(priced));
    const Extra approved = approvedExtra(priced, "R. Haas", day(3)).value();
    EXPECT_FALSE(pricedExtra(approved, Money::dollars(1))) << "an approved price stands";
    EXPECT_FALSE(droppedExtra(doneExtra(approved, day(5)).value()));
}

namespace {

/// One carpenter at $40 with 25 % burden: $50 an hour; 10 % overhead, 20 % markup.
PriceBook smallBook() {
    PriceBook prices;
    prices.of<CrewMember>().put({Id<CrewMember>(1), "Lena", Money::dollars(40), true});
    Burden burden;
    burden.id = Id<Burden>(2);
    burden.ofWages = Percent::whole(25);
    prices.of<Burden>().put(burden);
    LabourRate rate;
    rate.id = Id<LabourRate>(3);
    rate.task = Task::prehungDoor;
    rate.minutes = MinutesPerUnit::whole(60);
    prices.of<LabourRate>().put(rate);
    Terms terms;
    terms.id = Id<Terms>(1);
    prices.of<Terms>().put(terms);
    return prices;
}

ExtraLine lineOf(Task task, int quantity, Money material) {
    ExtraLine line;
    line.task = task;
    line.quantity = Quantity::count(quantity);
    line.material = material;
    return line;
}

} // namespace

TEST(ExtraPrice, ComesFromTheBooksRates) {
    PriceBook prices = smallBook();
    // [calc] 2 doors and 1.5 h of other work: 3.5 h at 50 is 175, material 225; 400 + 10 % is 440;
    // 20 % markup 528, and 20 % margin 550.
    ExtraLine other = lineOf(Task::other, 0, Money());
    other.quantity = Quantity::thousandths(1500);
    const std::vector lines{lineOf(Task::prehungDoor, 2, Money::dollars(225)), other};
    const auto price = priceExtra(lines, prices);
    ASSERT_TRUE(price);
    EXPECT_EQ(price->hours, Hours::minutes(210));
    EXPECT_EQ(price->labour, Money::dollars(175));
    EXPECT_EQ(price->cost(), Money::dollars(440));
    EXPECT_EQ(price->price, Money::dollars(528));

    Terms terms = prices.terms();
    terms.profitKind = ProfitKind::marginOnPrice;
    prices.of<Terms>().put(terms);
    EXPECT_EQ(priceExtra(lines, prices)->price, Money::dollars(550));
}

TEST(ExtraPrice, AsksForARate) {
    EXPECT_EQ(priceExtra({lineOf(Task::mantel, 1, Money())}, smallBook()).error().sentence,
        "The book has no labour rate for \"mantel\"; price the extra by the hour.");
}
