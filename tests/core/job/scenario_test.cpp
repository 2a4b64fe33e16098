// SPDX-License-Identifier: GPL-3.0-or-later
// What a bid would come to under a scenario; the book stays as it is.
#include "job/scenario_figures.h"

#include "support/small_book.h"

#include <gtest/gtest.h>

namespace miterbook {
namespace {

constexpr Id<Plan> aspenOfScenarios{31};

class Scenarios : public testing::Test {
protected:
    Scenarios() {
        LabourRate rate;
        rate.id = Id<LabourRate>(200);
        rate.task = Task::pictureFrameWindow;
        rate.minutes = MinutesPerUnit::whole(30);
        m_book.prices.of<LabourRate>().put(rate);
        m_book.prices.of<CrewMember>().put({Id<CrewMember>(201), "Lena", Money::dollars(40), true});
        Profile wide = *m_book.prices.profile(Id<Profile>(20));
        wide.id = Id<Profile>(202);
        wide.name = "Wide casing";
        wide.width = Length::sixteenths(88);
        m_book.prices.of<Profile>().put(wide);
        m_book.prices.of<Stick>().put(
            {Id<Stick>(203), wide.id, Length::feet(14), Money::cents(4000)});
        Terms terms;
        terms.id = Id<Terms>(1);
        m_book.prices.of<Terms>().put(terms);
        m_today = figuresFor(m_book, aspenOfScenarios, {}, Effort::thorough);
        m_scenario = scenarioFrom(m_today.setup, "Then");
    }
    JobFigures then() {
        const Book before = m_book;
        JobFigures figures = figuresIf(m_book, aspenOfScenarios, {}, m_scenario, m_today, m_memory);
        EXPECT_EQ(m_book, before);
        return figures;
    }
    const WorkTotal& today() const { return m_today.estimate.total; }

    Book m_book = smallBook();
    JobFigures m_today;
    Scenario m_scenario;
    StickMemory m_memory;
};

TEST_F(Scenarios, OneThatChangesNothingIsTheBid) {
    ASSERT_GT(today().price, Money());
    EXPECT_EQ(then().estimate, m_today.estimate);
    EXPECT_EQ(then().sticks, m_today.sticks);
}

TEST_F(Scenarios, Wages) {
    m_scenario.wages = Percent::whole(110);
    const WorkTotal total = then().estimate.total;
    EXPECT_EQ(total.labour, share(today().labour, Percent::whole(110))); // no yearly burden here
    EXPECT_EQ(total.hours, today().hours);
    EXPECT_EQ(total.material, today().material);
    EXPECT_GT(total.price, today().price);
}

TEST_F(Scenarios, Material) {
    m_scenario.material = Percent::whole(200);
    const WorkTotal total = then().estimate.total;
    EXPECT_EQ(total.material, today().material * 2);
    EXPECT_EQ(total.labour, today().labour);
}

TEST_F(Scenarios, MinutesOfAllAndOfOneTask) {
    m_scenario.minutes = Percent::whole(50);
    EXPECT_EQ(then().estimate.total.hours.minutes() * 2, today().hours.minutes());
    m_scenario.task = Task::pictureFrameWindow;
    m_scenario.taskMinutes = MinutesPerUnit::whole(45); // goes before the share of all
    EXPECT_EQ(then().estimate.total.hours.minutes() * 2, today().hours.minutes() * 3);
}

TEST_F(Scenarios, AnotherProfileIsPlannedWithItsOwnSticks) {
    m_scenario.insteadOf = Id<Profile>(20);
    m_scenario.profile = Id<Profile>(202);
    const JobFigures figures = then();
    ASSERT_EQ(figures.sticks.size(), 1U);
    EXPECT_EQ(figures.sticks.front().profile, Id<Profile>(202));
    EXPECT_EQ(figures.sticks.front().cost.cents() % 4000, 0);
    EXPECT_GT(figures.estimate.total.material, today().material);
    EXPECT_EQ(then().sticks, figures.sticks); // remembered
}

TEST_F(Scenarios, ProfitAndOverhead) {
    m_scenario.profitKind = ProfitKind::marginOnPrice;
    m_scenario.profit = Percent::whole(50);
    m_scenario.overhead = Percent();
    const Estimate estimate = then().estimate;
    EXPECT_EQ(estimate.total.overhead, Money());
    EXPECT_EQ(estimate.total.price, estimate.total.cost() * 2);
}

TEST_F(Scenarios, SideBySideTheyShowPriceChanceAndHours) {
    const RiskBelief belief = riskBelief({});
    const BidOutcome now = outcomeOf("now", m_today.estimate, belief);
    m_scenario.wages = Percent::whole(150);
    const BidOutcome dear = outcomeOf(m_scenario.name, then().estimate, belief);
    EXPECT_EQ(now.price - now.cost, now.profit);
    EXPECT_GT(now.breakEvenHours, static_cast<double>(now.hours.minutes()) / 60);
    EXPECT_GT(now.chanceOfProfit, now.chanceOfTarget);
    EXPECT_EQ(dear.name, "Then");
    EXPECT_GT(dear.cost, now.cost);
    EXPECT_EQ(outcomeOf("none", Estimate(), belief).breakEvenHours, 0);
}

TEST_F(Scenarios, BelongToTheirJob) {
    m_scenario.id = Id<Scenario>(300);
    m_book.jobs.of<Scenario>().put(m_scenario);
    Scenario other = m_scenario;
    other.id = Id<Scenario>(301);
    other.plan = Id<Plan>(99);
    m_book.jobs.of<Scenario>().put(other);
    ASSERT_EQ(scenariosOf(m_book, aspenOfScenarios).size(), 1U);
    EXPECT_EQ(scenariosOf(m_book, aspenOfScenarios).front(), m_scenario);
    EXPECT_TRUE(figuresIf(m_book, Id<Plan>(99), {}, other, m_today, m_memory).sticks.empty());
}

} // namespace
} // namespace miterbook
