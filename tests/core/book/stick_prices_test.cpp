// SPDX-License-Identifier: GPL-3.0-or-later
// What a stick and a crew hour cost depends on the day.
#include "book/stick_prices.h"

#include <gtest/gtest.h>

#include <random>

namespace miterbook {
namespace {

Date on(int month, unsigned day, int year = 2026) {
    return std::chrono::year(year) / month / std::chrono::day(day);
}

StickPrice priceOf(std::int64_t id, std::int64_t stick, Date from, int cents) {
    StickPrice price;
    price.id = Id<StickPrice>(id);
    price.stick = Id<Stick>(stick);
    price.from = from;
    price.price = Money::cents(cents);
    return price;
}

class StickPrices : public testing::Test {
protected:
    StickPrices() {
        m_stick.id = Id<Stick>(1);
        m_stick.profile = Id<Profile>(9);
        m_stick.length = Length::feet(16);
        m_stick.price = Money::cents(2000);
        m_book.of<Stick>().put(m_stick);
        m_book.of<StickPrice>().put(priceOf(11, 1, on(9, 1), 2300)); // not in order of days
        m_book.of<StickPrice>().put(priceOf(12, 1, on(3, 1), 2100));
        m_book.of<StickPrice>().put(priceOf(13, 2, on(1, 1), 900)); // another stick's
    }
    int centsOn(Date day) const {
        return static_cast<int>(stickPriceOn(m_book, m_stick, day).cents());
    }

    PriceBook m_book;
    Stick m_stick;
};

TEST_F(StickPrices, TheOneThatBeganLastIsInForce) {
    EXPECT_EQ(centsOn(on(2, 28)), 2000); // before any: its own
    EXPECT_EQ(centsOn(on(3, 1)), 2100);  // on the day itself
    EXPECT_EQ(centsOn(on(8, 31)), 2100);
    EXPECT_EQ(centsOn(on(9, 1)), 2300);
    EXPECT_EQ(centsOn(on(1, 1, 2030)), 2300);
    EXPECT_EQ(centsOn(noDate), 2300);
}

TEST_F(StickPrices, TheBookGoesByItsDay) {
    m_book.setDay(on(4, 1));
    EXPECT_EQ(m_book.stockedSticks(Id<Profile>(9)).front().price, Money::cents(2100));
    m_book.setDay(on(2, 1));
    EXPECT_EQ(m_book.stockedSticks(Id<Profile>(9)).front().price, Money::cents(2000));
    EXPECT_EQ(m_book.priceOf(m_stick), Money::cents(2000));
}

TEST_F(StickPrices, HistoryGoesByDays) {
    const auto history = priceHistory(m_book, m_stick.id);
    ASSERT_EQ(history.size(), 2U);
    EXPECT_EQ(history.front().from, on(3, 1));
    EXPECT_TRUE(priceHistory(m_book, Id<Stick>(77)).empty());
}

TEST_F(StickPrices, FlattenedTheyCanBeTriedOut) {
    m_book.setDay(on(4, 1));
    PriceBook flat = pricesInForce(m_book);
    EXPECT_TRUE(flat.of<StickPrice>().empty());
    EXPECT_EQ(flat.of<Stick>().find(m_stick.id)->price, Money::cents(2100));
    EXPECT_EQ(flat.stockedSticks(Id<Profile>(9)), m_book.stockedSticks(Id<Profile>(9)));
}

/// However the lists come, one pass over them says what looking at each stick by itself says.
TEST(PricesInForce, AgreeWithEachStickByItself) {
    std::mt19937 random(31);
    for (int run = 0; run < 100; ++run) {
        PriceBook book;
        for (int i = 1; i <= 6; ++i) {
            Stick stick;
            stick.id = Id<Stick>(i);
            stick.profile = Id<Profile>(1 + i % 2);
            stick.length = Length::feet(7 + i);
            stick.price = Money::cents(100 * i);
            book.of<Stick>().put(stick);
        }
        for (unsigned i = random() % 40; i > 0; --i) {
            StickPrice price = priceOf(100 + static_cast<int>(i), 1 + random() % 7,
                addDays(on(1, 1), static_cast<int>(random() % 300)),
                static_cast<int>(random() % 9000));
            bool again = false; // a stick has one price from a day
            for (const StickPrice& held : priceHistory(book, price.stick))
                again = again || held.from == price.from;
            if (!again)
                book.of<StickPrice>().put(price);
        }
        book.setDay(run % 5 == 0 ? noDate : addDays(on(1, 1), static_cast<int>(random() % 330)));
        const PriceBook flat = pricesInForce(book);
        for (const int profile : {1, 2}) {
            for (const Stick& stick : book.sticksOf(Id<Profile>(profile))) {
                const Stick own = *book.of<Stick>().find(stick.id);
                EXPECT_EQ(stick.price, stickPriceOn(book, own, book.day()));
                EXPECT_EQ(flat.of<Stick>().find(stick.id)->price, stick.price);
            }
        }
    }
}

TEST(PriceOfStick, ByTheStickTheFootAndTheHundredFeet) {
    const Length sixteen = Length::feet(16);
    EXPECT_EQ(priceOfStick(sixteen, UnitPrice::cents(2150), PricePer::stick), Money::cents(2150));
    EXPECT_EQ(priceOfStick(sixteen, UnitPrice::cents(131), PricePer::foot), Money::cents(2096));
    // 131.25 for 100 ft is 1.3125 a foot: 21.00 for 16 ft. [calc]
    EXPECT_EQ(
        priceOfStick(sixteen, UnitPrice::cents(13'125), PricePer::hundredFeet), Money::cents(2100));
    // Half a cent goes up: 0.0625 x 10 ft = 0.625. [calc]
    EXPECT_EQ(priceOfStick(Length::feet(10), UnitPrice::tenThousandths(625), PricePer::foot),
        Money::cents(63));
    EXPECT_EQ(priceOfStick(sixteen, UnitPrice(), PricePer::foot), Money());
}

TEST(PriceOfStick, AHundredFeetIsAHundredTimesAFoot) {
    std::mt19937 random(7);
    for (int i = 0; i < 500; ++i) {
        const Length length = Length::feet(1 + static_cast<int>(random() % 20));
        const auto foot = static_cast<std::int64_t>(random() % 90'000);
        EXPECT_EQ(priceOfStick(length, UnitPrice::tenThousandths(foot), PricePer::foot),
            priceOfStick(length, UnitPrice::tenThousandths(foot * 100), PricePer::hundredFeet));
    }
}

/// FICA 7.65 % [pub: employer share 6.2 + 1.45], an invented state rate that changes with the year.
class DatedBurden : public testing::Test {
protected:
    DatedBurden() {
        CrewMember lena;
        lena.id = Id<CrewMember>(1);
        lena.name = "Lena";
        lena.wage = Money::dollars(40);
        m_book.of<CrewMember>().put(lena);
        put(2, "FICA", 765, noDate);
        put(3, "State", 300, on(1, 1, 2026));
        put(4, "State", 500, on(1, 1, 2027));
    }
    void put(std::int64_t id, const char* name, int basisPoints, Date from) {
        Burden item;
        item.id = Id<Burden>(id);
        item.name = name;
        item.ofWages = Percent::basisPoints(basisPoints);
        item.from = from;
        m_book.of<Burden>().put(item);
    }
    Money rateOn(Date day) {
        m_book.setDay(day);
        return m_book.crewRate();
    }

    PriceBook m_book;
};

TEST_F(DatedBurden, TheLatestOfANameCounts) {
    EXPECT_EQ(rateOn(on(12, 31, 2025)), Money::cents(4306)); // 40 x 1.0765 [calc]
    EXPECT_EQ(rateOn(on(1, 1, 2026)), Money::cents(4426));   // 40 x 1.1065 [calc]
    EXPECT_EQ(rateOn(on(12, 31, 2026)), Money::cents(4426));
    EXPECT_EQ(rateOn(on(1, 1, 2027)), Money::cents(4506)); // 40 x 1.1265 [calc]
    EXPECT_EQ(rateOn(noDate), Money::cents(4506));
}

TEST_F(DatedBurden, ItemsOfOneNameWithoutADayAllCount) {
    put(5, "Comp", 400, noDate);
    put(6, "Comp", 600, noDate);                             // two policies: both are paid
    EXPECT_EQ(rateOn(on(12, 31, 2025)), Money::cents(4706)); // 40 x 1.1765 [calc]
    put(7, "Comp", 900, on(1, 1, 2026));                     // from now on this one
    EXPECT_EQ(rateOn(on(6, 1, 2026)), Money::cents(4786));   // 40 x 1.1965 [calc]
}

} // namespace
} // namespace miterbook
