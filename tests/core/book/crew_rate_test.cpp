// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/starter_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class CrewRate : public ::testing::Test {
protected:
    void person(Money wage, bool active = true) {
        m_book.of<CrewMember>().put({m_ids.next<CrewMember>(), "Someone", wage, active});
    }
    void burden(int basisPoints, int dollarsPerYear = 0) {
        m_book.of<Burden>().put({m_ids.next<Burden>(), "Item", Percent::basisPoints(basisPoints),
            Money::dollars(dollarsPerYear), 0, Origin::shop, {}});
    }
    void hoursPerYear(int hours) {
        Terms terms;
        terms.id = Id<Terms>(1);
        terms.hoursPerYear = hours;
        m_book.of<Terms>().put(terms);
    }
    Money rate() const { return m_book.crewRate(); }

    PriceBook m_book;
    IdSource m_ids;
};

TEST_F(CrewRate, NobodyCostsNothing) {
    burden(4200);
    EXPECT_EQ(rate(), Money());
}

/// A published burden list totals 42 % and takes $20.00 to $28.43 [pub: remodeling.hw.net]. Its 42
/// % is a rounded sum: 20 x 1.42 is 28.40; only 42.13 to 42.17 % gives 28.43 to the cent [calc].
TEST_F(CrewRate, BurdenOfAPublishedList) {
    person(Money::dollars(20));
    burden(4200);
    EXPECT_EQ(rate(), Money::cents(2840));
    burden(15);
    EXPECT_EQ(rate(), Money::cents(2843));
}

/// FICA 7.65 % of $20.00 is $1.53; FUTA $42 over 2,000 hours is $0.021 [calc].
TEST_F(CrewRate, YearlyBurdenIsSpreadOverHours) {
    person(Money::dollars(20));
    burden(765);
    EXPECT_EQ(rate(), Money::cents(2153));
    burden(0, 42);
    EXPECT_EQ(rate(), Money::cents(2155)); // 21.551 rounds to 21.55
    hoursPerYear(100);
    EXPECT_EQ(rate(), Money::cents(2195));
}

TEST_F(CrewRate, IsTheMeanOfTheActive) {
    person(Money::dollars(30));
    person(Money::dollars(25));
    person(Money::dollars(90), false);
    EXPECT_EQ(rate(), Money::cents(2750));
    burden(1000, 100); // each person's $100 a year, so $0.05 an hour for each
    EXPECT_EQ(rate(), Money::cents(3030));
}

TEST_F(CrewRate, RoundsHalfACentUp) {
    person(Money::cents(1001));
    person(Money::cents(1002));
    EXPECT_EQ(rate(), Money::cents(1002));
}

TEST(StarterCrew, CarriesTheYearsFederalItems) {
    IdSource ids;
    const PriceBook book = starterBook(ids);
    bool fica = false;
    bool futa = false;
    for (const auto& [id, item] : book.of<Burden>()) {
        fica = fica || (item.ofWages == Percent::basisPoints(765) && item.year == 2025);
        futa = futa || (item.perYear == Money::dollars(42) && item.year == 2025);
    }
    EXPECT_TRUE(fica); // 6.2 % to the wage base + 1.45 %, 2025
    EXPECT_TRUE(futa); // 0.6 % of the first $7,000
    EXPECT_EQ(book.of<CrewMember>().size(), 2U);
    // mean wage 32.00 x 1.2285 + 42 / 2000 [calc]
    EXPECT_EQ(book.crewRate(), Money::cents(3933));
}

} // namespace
} // namespace miterbook
