// SPDX-License-Identifier: GPL-3.0-or-later
// A supplier's price list, read against the book and brought in whole or not at all.
#include "io/price_list.h"

#include "book/stick_prices.h"
#include "job/workbook.h"
#include "support/memory_keeper.h"

#include <gmock/gmock.h>

#include <random>

namespace miterbook {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;

constexpr Date may{std::chrono::year(2026), std::chrono::May, std::chrono::day(1)};

class PriceList : public testing::Test {
protected:
    PriceList()
        : m_keeper(shopBook())
        , m_workbook(Workbook::open(m_keeper).value()) {}

    static Book shopBook() {
        Book book;
        Shop shop;
        shop.id = Id<Shop>(1);
        book.prices.of<Shop>().put(shop);
        for (const auto& [id, name] :
            {std::pair(10, "Flat casing"), std::pair(11, "Eased base"), std::pair(12, "Crown")}) {
            Profile profile;
            profile.id = Id<Profile>(id);
            profile.name = name;
            profile.thickness = Length::sixteenths(11);
            profile.width = Length::sixteenths(52);
            book.prices.of<Profile>().put(profile);
        }
        book.prices.of<Stick>().put(
            {Id<Stick>(21), Id<Profile>(10), Length::feet(14), Money::cents(1890)});
        book.prices.of<Stick>().put(
            {Id<Stick>(22), Id<Profile>(10), Length::feet(16), Money::cents(2160)});
        book.prices.of<Stick>().put(
            {Id<Stick>(23), Id<Profile>(11), Length::feet(16), Money::cents(1440)});
        return book;
    }

    const Book& book() const { return m_workbook.book(); }
    Result<PriceListReading> tryRead(const std::string& csv, PricePer per = PricePer::stick) const {
        return readPriceList(csv, book().prices, {"Tolliver Yard", may, per});
    }
    PriceListReading read(const std::string& rows, PricePer per = PricePer::stick) const {
        const auto reading = tryRead("Item,Length,Price,Per,Effective\n" + rows, per);
        EXPECT_TRUE(reading.ok());
        return reading.valueOr({});
    }
    std::string refusal(const std::string& row) const {
        const auto reading = read(row);
        return reading.rejected.empty() ? std::string()
                                        : PriceListReading::sentence(reading.rejected.front());
    }
    std::string bring(const PriceListReading& reading) {
        const auto edit = priceListEdit(book(), m_workbook.ids(), reading, "list.csv");
        if (!edit)
            return edit.error().sentence;
        const auto done = m_workbook.perform(*edit);
        return done ? edit->sentence : done.error().sentence;
    }
    Money priceOn(std::int64_t stick, Date day) const {
        return stickPriceOn(book().prices, *book().prices.of<Stick>().find(Id<Stick>(stick)), day);
    }

    MemoryKeeper m_keeper;
    Workbook m_workbook;
};

TEST_F(PriceList, APricePerStickHoldsFromItsDay) {
    const auto reading = read("Flat casing,14,19.75\nflat  CASING,16',22.50\n");
    ASSERT_EQ(reading.changes.size(), 2U);
    EXPECT_EQ(reading.changes.front().before, Money::cents(1890));
    EXPECT_EQ(bring(reading), "Bring in 2 prices of Tolliver Yard from list.csv");
    EXPECT_EQ(priceOn(21, addDays(may, -1)), Money::cents(1890));
    EXPECT_EQ(priceOn(21, may), Money::cents(1975));
    EXPECT_EQ(priceOn(22, may), Money::cents(2250));
    EXPECT_EQ(priceOn(23, may), Money::cents(1440));
}

TEST_F(PriceList, APriceByTheFootIsForEveryStickOfTheProfile) {
    const auto reading = read("Flat casing,,1.40,ft\nEased base,,95,100 ft\n");
    EXPECT_TRUE(reading.rejected.empty());
    ASSERT_EQ(reading.changes.size(), 3U);
    EXPECT_EQ(reading.changes[0].price.price, Money::cents(1960)); // 14 x 1.40 [calc]
    EXPECT_EQ(reading.changes[1].price.price, Money::cents(2240));
    EXPECT_EQ(reading.changes[2].price.price, Money::cents(1520)); // 16 x 0.95 [calc]
    EXPECT_EQ(reading.changes[2].price.quoted, UnitPrice::cents(9500));
    EXPECT_EQ(reading.changes[2].price.per, PricePer::hundredFeet);
}

TEST_F(PriceList, ALengthTheBookLacksIsANewStick) {
    const auto reading = read("Crown,12,24\n");
    ASSERT_EQ(reading.changes.size(), 1U);
    EXPECT_FALSE(reading.changes.front().stick);
    EXPECT_FALSE(reading.changes.front().before);
    ASSERT_THAT(bring(reading), HasSubstr("Bring in 1 price"));
    const auto sticks = book().prices.stockedSticks(Id<Profile>(12));
    ASSERT_EQ(sticks.size(), 1U);
    EXPECT_EQ(sticks.front().length, Length::feet(12));
    EXPECT_EQ(sticks.front().price, Money::dollars(24));
}

TEST_F(PriceList, WhatTheBookHasAlreadyIsNoChange) {
    EXPECT_EQ(read("Flat casing,14,18.90\n").unchanged, 1);
    ASSERT_THAT(bring(read("Flat casing,14,19.75\n")), HasSubstr("Bring in"));
    const auto again = read("Flat casing,14,19.75\n");
    EXPECT_EQ(again.unchanged, 1);
    EXPECT_EQ(bring(again), "The book has the prices of list.csv already.");
}

TEST_F(PriceList, ASecondListOfTheSameDayTakesThePlaceOfTheFirst) {
    bring(read("Flat casing,14,19.75\n"));
    bring(read("Flat casing,14,19.95\n"));
    EXPECT_EQ(priceHistory(book().prices, Id<Stick>(21)).size(), 1U);
    EXPECT_EQ(priceOn(21, may), Money::cents(1995));
}

TEST_F(PriceList, ADayInTheRowGoesBeforeTheListsOwn) {
    bring(read("Flat casing,14,19.75,,6/15/2026\nFlat casing,14,20.10,,2026-09-01\n"));
    EXPECT_EQ(priceOn(21, may), Money::cents(1890));
    EXPECT_EQ(priceOn(21, std::chrono::year(2026) / 6 / 15), Money::cents(1975));
    EXPECT_EQ(priceOn(21, std::chrono::year(2026) / 9 / 1), Money::cents(2010));
}

TEST_F(PriceList, EachFaultIsSaidWithItsLine) {
    EXPECT_EQ(refusal("Flat casing,14,19.75\nOak casing,14,30\n"),
        "line 3, Item: The book has no profile \"Oak casing\".");
    EXPECT_EQ(refusal("Flat casing,fourteen,19.75\n").substr(0, 15), "line 2, Length:");
    EXPECT_EQ(refusal("Flat casing,14,19.75x\n"),
        "line 2, Price: \"19.75x\" is not a price; write it as 1.25, four decimals at most.");
    EXPECT_EQ(refusal("Flat casing,14,-3\n").substr(0, 14), "line 2, Price:");
    EXPECT_EQ(refusal("Flat casing,14,19.75,bundle\n"),
        "line 2, Per: \"bundle\" is none of the ways a price is quoted: stick, foot, 100 ft or "
        "metre.");
    EXPECT_EQ(refusal("Flat casing,,19.75,each\n"),
        "line 2, Length: A price for a stick needs the stick's length.");
    EXPECT_EQ(
        refusal("Crown,,1.10,ft\n"), "line 2, Length: The book has no stick of this profile yet.");
    EXPECT_EQ(refusal("Flat casing,14,19\nFlat casing,14,20\n"),
        "line 3, Item: The list has a price for this stick above already.");
    EXPECT_THAT(refusal("Flat casing,14,19,,soon\n"), HasSubstr("line 2, Effective:"));
    EXPECT_THAT(refusal("Flat casing,16,990000\n"), HasSubstr("is not between 0 and 10,000.00"));
}

TEST_F(PriceList, WithOneFaultNothingIsBroughtIn) {
    const auto reading = read("Flat casing,14,19.75\nOak casing,14,30\n");
    EXPECT_EQ(reading.changes.size(), 1U);
    EXPECT_EQ(bring(reading),
        "list.csv, line 3, Item: The book has no profile \"Oak casing\". Nothing was brought in.");
    EXPECT_TRUE(book().prices.of<StickPrice>().empty());
}

TEST_F(PriceList, NeedsItsColumnsAndADay) {
    EXPECT_THAT(tryRead("Item,Length\nFlat casing,14\n").error().sentence,
        HasSubstr("columns for profile and price"));
    EXPECT_FALSE(tryRead("").ok());
    EXPECT_EQ(readPriceList("Item,Price\nx,1\n", book().prices, {"", noDate, {}}).error().sentence,
        "Say from which day on the prices hold.");
    EXPECT_THAT(
        tryRead("Item;Price;Bin;Per\nFlat casing;1.4;A7;ft\n")->unmapped, ElementsAre("Bin"));
}

TEST_F(PriceList, UndoTakesTheWholeListBack) {
    const auto edit = priceListEdit(
        book(), m_workbook.ids(), read("Flat casing,14,20\nCrown,12,24\n"), "list.csv");
    const Book before = book();
    ASSERT_TRUE(m_workbook.perform(*edit));
    ASSERT_TRUE(m_workbook.perform(inverse(*edit)));
    EXPECT_EQ(book(), before);
}

TEST_F(PriceList, HostileBytesAreRefusedOrSaid) {
    std::mt19937 random(20261126);
    const std::string letters = "Item,Price\n\"'\t;-=0123456789.x\xff\x80\r Flat casing";
    for (int run = 0; run < 400; ++run) {
        std::string csv = "Item,Length,Price,Per\n";
        for (unsigned i = random() % 120; i > 0; --i)
            csv += letters[random() % letters.size()];
        const auto reading = tryRead(csv);
        if (!reading) {
            EXPECT_FALSE(reading.error().sentence.empty());
        } else if (!reading->rejected.empty()) {
            EXPECT_FALSE(priceListEdit(book(), m_workbook.ids(), *reading, "x").ok());
        }
    }
}

} // namespace
} // namespace miterbook
