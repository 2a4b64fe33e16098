// SPDX-License-Identifier: GPL-3.0-or-later
// A price typed over in the table of sticks.
#include "job/stick_edits.h"

#include "book/stick_prices.h"
#include "job/row_check.h"
#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

constexpr Id<Stick> fourteen{21};
constexpr Date november{std::chrono::year(2026), std::chrono::November, std::chrono::day(25)};

class StickEdits : public testing::Test {
protected:
    StickEdits() { m_book.prices.setDay(november); }
    Stick shown() const {
        Stick stick = *m_book.prices.of<Stick>().find(fourteen);
        stick.price = m_book.prices.priceOf(stick);
        return stick;
    }
    void type(const Stick& stick) {
        EditBuilder edit(m_book, "Type");
        putStick(edit, m_ids, stick, november);
        const Edit made = edit.take();
        const auto checked = checkRows(m_book, made);
        ASSERT_TRUE(checked.ok()) << checked.error().sentence;
        apply(m_book, made);
    }
    void quote(Date from, int cents) {
        StickPrice price;
        price.id = m_ids.next<StickPrice>();
        price.stick = fourteen;
        price.from = from;
        price.price = Money::cents(cents);
        m_book.prices.of<StickPrice>().put(price);
    }
    std::vector<StickPrice> history() const { return priceHistory(m_book.prices, fourteen); }

    Book m_book = smallBook();
    IdSource m_ids{1000};
};

TEST_F(StickEdits, WithoutHistoryThePriceIsTheSticksOwn) {
    Stick stick = shown();
    stick.price = Money::cents(1999);
    type(stick);
    EXPECT_TRUE(history().empty());
    EXPECT_EQ(m_book.prices.of<Stick>().find(fourteen)->price, Money::cents(1999));
}

TEST_F(StickEdits, WithHistoryItIsOneMorePriceFromToday) {
    quote(addDays(november, -60), 2050);
    Stick stick = shown();
    EXPECT_EQ(stick.price, Money::cents(2050));
    stick.price = Money::cents(2110);
    type(stick);
    ASSERT_EQ(history().size(), 2U);
    EXPECT_EQ(history().back().from, november);
    EXPECT_EQ(shown().price, Money::cents(2110));
    EXPECT_EQ(stickPriceOn(m_book.prices, stick, addDays(november, -1)), Money::cents(2050));
    stick.price = Money::cents(2120); // typed again the same day
    type(stick);
    EXPECT_EQ(history().size(), 2U);
    EXPECT_EQ(shown().price, Money::cents(2120));
}

TEST_F(StickEdits, OtherFieldsLeaveThePriceAlone) {
    quote(addDays(november, -60), 2050);
    quote(addDays(november, 30), 2300); // not in force yet
    const Money own = m_book.prices.of<Stick>().find(fourteen)->price;
    Stick stick = shown();
    stick.stocked = false;
    type(stick);
    EXPECT_EQ(history().size(), 2U);
    EXPECT_EQ(m_book.prices.of<Stick>().find(fourteen)->price, own);
    EXPECT_FALSE(m_book.prices.of<Stick>().find(fourteen)->stocked);
}

TEST_F(StickEdits, AStickGoesWithItsPrices) {
    quote(addDays(november, -60), 2050);
    EditBuilder edit(m_book, "Remove");
    removeStick(edit, fourteen);
    const Edit removal = edit.take();
    EXPECT_EQ(removal.changes.size(), 2U);
    apply(m_book, removal);
    EXPECT_TRUE(m_book.prices.of<StickPrice>().empty());
    EXPECT_TRUE(m_book.prices.of<Stick>().empty());
}

} // namespace
} // namespace miterbook
