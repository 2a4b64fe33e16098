// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/starter_book.h"
#include "job/price_sheet.h"
#include "support/small_book.h"

#include <gmock/gmock.h>

#include <algorithm>

using namespace miterbook;
using testing::ElementsAre;
using testing::IsEmpty;

namespace {

constexpr Id<PlanSet> set(30);
constexpr Id<Plan> aspenPlan(31);
constexpr Id<Variant> withoutW2(40);
constexpr Id<Variant> elevationB(140);

/// The small book with an elevation that takes W1 away, priced by the starter's rates and crew.
Book pricedBook() {
    Book book = smallBook();
    IdSource ids(1000);
    const PriceBook starter = starterBook(ids);
    book.prices.of<LabourRate>() = starter.of<LabourRate>();
    book.prices.of<CrewMember>() = starter.of<CrewMember>();
    book.prices.of<Terms>() = starter.of<Terms>();
    book.prices.of<Practice>() = starter.of<Practice>();
    SheetRows& rows = book.sheets.at(aspenPlan);
    Variant elevation;
    elevation.id = elevationB;
    elevation.plan = aspenPlan;
    elevation.kind = VariantKind::elevation;
    elevation.name = "B";
    rows.of<Variant>().put(elevation);
    Opening gone = *rows.of<Opening>().find(Id<Opening>(43));
    gone.id = Id<Opening>(143);
    gone.variant = elevationB;
    gone.replaces = Id<Opening>(43);
    gone.removed = true;
    rows.of<Opening>().put(gone);
    return book;
}

Money bidPrice(const Book& book, const Selection& selection) {
    return figuresFor(book, aspenPlan, selection, Effort::thorough).estimate.total.price;
}

PlanPrices onlyPlan(const Book& book) {
    StickMemory memory;
    const std::vector<PlanPrices> sheet = priceSheet(book, set, memory, Effort::thorough);
    return sheet.size() == 1 ? sheet.front() : PlanPrices();
}

} // namespace

TEST(PriceSheet, EveryPriceIsThatOfAWholeBid) {
    const Book book = pricedBook();
    const PlanPrices prices = onlyPlan(book);
    ASSERT_EQ(prices.columns.size(), 2U);
    EXPECT_EQ(prices.columns[0].price, bidPrice(book, {}));
    EXPECT_EQ(prices.columns[1].price, bidPrice(book, {elevationB, {}}));
    EXPECT_EQ(prices.columns[1].name, "B");
    EXPECT_LT(prices.columns[1].price, prices.columns[0].price);
}

TEST(PriceSheet, AnOptionIsTheExactDifferenceUnderEachElevation) {
    const Book book = pricedBook();
    const PlanPrices prices = onlyPlan(book);
    ASSERT_EQ(prices.options.size(), 1U);
    EXPECT_THAT(prices.options[0].changes,
        ElementsAre(bidPrice(book, {{}, {withoutW2}}) - bidPrice(book, {}),
            bidPrice(book, {elevationB, {withoutW2}}) - bidPrice(book, {elevationB, {}})));
    EXPECT_LT(prices.options[0].changes[0], Money()); // it takes a window away
}

TEST(PriceSheet, ALotIsItsColumnAndItsOptions) {
    const Book book = pricedBook();
    const PlanPrices prices = onlyPlan(book);
    EXPECT_EQ(
        lotPrice(prices, {elevationB, {withoutW2}}), bidPrice(book, {elevationB, {withoutW2}}));
    EXPECT_EQ(lotPrice(prices, {}), bidPrice(book, {}));
    EXPECT_EQ(lotPrice(prices, {Id<Variant>(999), {}}), std::nullopt);
    EXPECT_EQ(lotPrice(prices, {{}, {Id<Variant>(999)}}), std::nullopt);
}

TEST(PriceSheet, HousesAndClosedPlansAreNotOnIt) {
    Book book = pricedBook();
    Plan own = *book.plan(aspenPlan);
    own.id = Id<Plan>(231);
    own.house = Id<House>(230);
    book.jobs.of<Plan>().put(own);
    Plan closed = *book.plan(aspenPlan);
    closed.id = Id<Plan>(232);
    closed.name = "Birch";
    book.jobs.of<Plan>().put(closed);
    EXPECT_THAT(plansOf(book, set), ElementsAre(aspenPlan, Id<Plan>(232)));
    EXPECT_EQ(onlyPlan(book).name, "Aspen");
    EXPECT_THAT(plansOf(book, Id<PlanSet>(77)), IsEmpty());
}

TEST(PriceSheet, WhatKeepsAPriceFromBeingRightIsSaidOnce) {
    Book book = pricedBook();
    book.prices.of<LabourRate>() = {};
    const PlanPrices prices = onlyPlan(book);
    ASSERT_FALSE(prices.problems.empty());
    for (const std::string& problem : prices.problems)
        EXPECT_EQ(std::ranges::count(prices.problems, problem), 1) << problem;
}
