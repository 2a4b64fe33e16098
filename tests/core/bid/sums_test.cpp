// SPDX-License-Identifier: GPL-3.0-or-later
#include "small_shop.h"

#include <gtest/gtest.h>

#include <random>

namespace miterbook {
namespace {

/// A shop and a takeoff with odd numbers everywhere.
class RandomJob {
public:
    explicit RandomJob(unsigned seed)
        : m_random(seed) {
        for (const auto& [task, text] : Words<Task>::list) {
            if (chance(80))
                shop.addRate(task, upTo(90));
            if (chance(50))
                shop.addPiecePrice(task, Money::cents(upTo(20'000)));
        }
        shop.addFactor(Condition::stainGrade, 137);
        shop.addFactor(Condition::upperFloor, 104);
        for (const auto& [use, text] : Words<PartUse>::list) {
            if (chance(80))
                shop.addPart(use, Money::cents(upTo(9999)), chance(20));
        }
        shop.addConsumable(Money::cents(upTo(3000)), 1 + upTo(400));
        shop.addConsumable(Money::cents(upTo(3000)), 1 + upTo(400));
        shop.addStick(shop.base, Length::feet(12), Money::cents(1 + upTo(2999)));
        shop.setTax(Percent::basisPoints(upTo(1200)));
        shop.prices.of<CrewMember>().put(
            {Id<CrewMember>(900), "Ivo Lenz", Money::cents(3217), true});
        fillTakeoff();
        fillSetup();
    }

    SmallShop shop;
    Takeoff takeoff;
    BidSetup setup;

private:
    int upTo(int most) { return static_cast<int>(m_random() % static_cast<unsigned>(most + 1)); }
    bool chance(int percent) { return upTo(99) < percent; }
    template <class E>
    E any() {
        return Words<E>::list[m_random() % Words<E>::list.size()].value;
    }

    void fillTakeoff() {
        for (int i = 0, n = upTo(30); i < n; ++i) {
            TaskCount task = taskOf(any<Task>(), Quantity::thousandths(upTo(40'000)), upTo(9));
            if (chance(30))
                task.conditions.add(Condition::stainGrade);
            if (chance(30))
                task.conditions.add(Condition::upperFloor);
            takeoff.tasks.push_back(task);
        }
        for (int i = 0, n = upTo(30); i < n; ++i)
            takeoff.pieces.push_back(
                pieceOf(any<PieceOfWork>(), chance(50) ? shop.casing : shop.base,
                    Length::sixtyFourths(1 + upTo(12'000)), 1 + upTo(3), upTo(9)));
        for (int i = 0, n = upTo(6); i < n; ++i)
            takeoff.parts.push_back(
                {any<PieceOfWork>(), any<PartUse>(), upTo(40), sourceAt(upTo(9), "R")});
        for (int i = 0, n = upTo(3); i < n; ++i)
            takeoff.goods.push_back(
                {any<PieceOfWork>(), Money::cents(upTo(99'999)), sourceAt(upTo(9), "R")});
    }

    void fillSetup() {
        setup.pricing = any<Pricing>();
        setup.profitKind = any<ProfitKind>();
        setup.profit = Percent::basisPoints(upTo(6000));
        setup.overhead = Percent::basisPoints(upTo(3000));
        setup.contingency = chance(50) ? Percent::basisPoints(upTo(1500)) : Percent();
        setup.delivery = chance(50) ? Money::cents(upTo(40'000)) : Money();
        setup.waste = chance(30) ? Percent::basisPoints(upTo(2000)) : Percent();
    }

    std::mt19937 m_random;
};

/// Whatever the inputs: pieces of work add up to the total to the cent in every column, price is
/// cost and profit, and lines add up to the pieces of work.
TEST(Sums, WorksAddUpToTheTotal) {
    for (unsigned seed = 0; seed < 300; ++seed) {
        SCOPED_TRACE(seed);
        const RandomJob job(seed);
        const Estimate result = estimateOf(job.takeoff, job.shop, job.setup);
        WorkTotal sum;
        for (const WorkTotal& work : result.works) {
            EXPECT_EQ(work.price, work.cost() + work.profit);
            sum.hours += work.hours;
            sum.labour += work.labour;
            sum.material += work.material;
            sum.consumables += work.consumables;
            sum.overhead += work.overhead;
            sum.contingency += work.contingency;
            sum.profit += work.profit;
            sum.price += work.price;
        }
        EXPECT_EQ(sum, result.total);
        EXPECT_EQ(result.total.price, result.total.cost() + result.total.profit);
        for (const WorkTotal& work : result.works) {
            Hours hours;
            Money labour;
            for (const EstimateLine& line : result.lines) {
                if (line.work == work.work) {
                    hours += line.hours;
                    labour += line.labour;
                }
            }
            EXPECT_EQ(hours, work.hours);
            EXPECT_EQ(labour, work.labour);
        }
    }
}

/// The totals are those of a plain reckoning that shares nothing out.
TEST(Sums, TotalsAreThePlainReckoning) {
    for (unsigned seed = 300; seed < 500; ++seed) {
        SCOPED_TRACE(seed);
        RandomJob job(seed);
        job.setup.pricing = Pricing::costAndProfit;
        job.setup.waste = Percent();
        const auto sticks = planAllSticks(stickNeeds(job.takeoff), job.shop.prices, Effort::quick);
        const Estimate result = estimate(job.takeoff, sticks, job.shop.prices, job.setup, 0);
        Money material;
        for (const StickPlan& plan : sticks)
            material += plan.cost;
        for (const PartCount& count : job.takeoff.parts) {
            const Part* part = job.shop.prices.part(count.use);
            if (part && !part->builderSupplies)
                material += part->price * count.count;
        }
        for (const BoughtGoods& goods : job.takeoff.goods)
            material += goods.cost;
        material += share(material, job.shop.prices.terms().materialTax);
        if (material > Money())
            material += job.setup.delivery;
        EXPECT_EQ(result.total.material, material);
        const Money direct = result.total.labour + material + result.total.consumables;
        EXPECT_EQ(result.total.overhead, share(direct, job.setup.overhead));
        EXPECT_EQ(result.total.contingency, share(direct, job.setup.contingency));
        const Money cost = direct + share(direct, job.setup.overhead)
            + share(direct, job.setup.contingency);
        EXPECT_EQ(result.total.price,
            job.setup.profitKind == ProfitKind::markupOnCost
                ? priceAtMarkup(cost, job.setup.profit)
                : priceAtMargin(cost, job.setup.profit).value());
    }
}

/// Under piece prices every line's price is in the price of its piece of work.
TEST(Sums, PiecePricedLinesAddUp) {
    for (unsigned seed = 500; seed < 700; ++seed) {
        SCOPED_TRACE(seed);
        RandomJob job(seed);
        job.setup.pricing = Pricing::piecePrices;
        job.takeoff.goods.clear();
        job.takeoff.parts.clear();
        job.takeoff.pieces.clear(); // nothing but lines is priced
        const Estimate result = estimateOf(job.takeoff, job.shop, job.setup);
        Money lines;
        for (const EstimateLine& line : result.lines)
            lines += line.price;
        EXPECT_EQ(lines, result.total.price);
    }
}

/// One more window adds to the price what a window costs by itself, to a cent of rounding a column.
TEST(Sums, AnOptionCostsWhatItAdds) {
    for (unsigned seed = 700; seed < 760; ++seed) {
        SCOPED_TRACE(seed);
        RandomJob job(seed);
        job.setup.pricing = Pricing::costAndProfit;
        job.setup.waste = Percent::whole(5); // material by the foot, so that it adds
        job.setup.delivery = Money(); // once a house, whatever an option adds
        Takeoff option;
        option.tasks = {taskOf(Task::mantel, Quantity::count(2), 50)};
        option.pieces = {pieceOf(PieceOfWork::windows, job.shop.casing, Length::inches(77), 3, 50)};
        Takeoff with = job.takeoff;
        with.tasks.insert(with.tasks.end(), option.tasks.begin(), option.tasks.end());
        with.pieces.insert(with.pieces.end(), option.pieces.begin(), option.pieces.end());
        const auto price = [&](const Takeoff& takeoff) {
            return estimateOf(takeoff, job.shop, job.setup).total.price.cents();
        };
        const std::int64_t difference = price(with) - price(job.takeoff);
        // A minute of hours rounding is under $1.20 at cost; profit at most doubles and a half it.
        EXPECT_NEAR(static_cast<double>(difference), static_cast<double>(price(option)), 300.0);
    }
}

} // namespace
} // namespace miterbook
