// SPDX-License-Identifier: GPL-3.0-or-later
#include "desk/figure_desk.h"

#include "ui/ui_kit.h"

#include <QTest>

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class FigureDeskTest : public testing::Test {
protected:
    FigureDeskTest()
        : m_figures(m_kit.desk()) {
        m_figures.setJob(m_kit.job());
    }
    ~FigureDeskTest() override { m_figures.stopSearch(); }

    bool settle() {
        return QTest::qWaitFor([this] { return m_figures.settled(); }, 60'000);
    }
    const std::vector<StickPlan>& plans() const { return m_figures.figures().sticks; }
    /// Another price for the sticks of the first profile that is bought.
    Edit dearer() {
        const Id<Profile> profile = plans().front().profile;
        EditBuilder edit(m_kit.book(), "Change prices");
        for (Stick stick : m_kit.book().prices.stockedSticks(profile)) {
            stick.price += Money::dollars(3);
            edit.put(stick);
        }
        return edit.take();
    }

    UiKit m_kit;
    FigureDesk m_figures;
};

TEST_F(FigureDeskTest, ShowsAPlanAtOnceAndSettlesOnABetterOne) {
    ASSERT_GT(plans().size(), 2U);
    EXPECT_FALSE(m_figures.settled());
    EXPECT_EQ(m_figures.unsettled(), static_cast<int>(plans().size()));
    const std::vector<StickPlan> quick = plans();
    ASSERT_TRUE(settle());
    EXPECT_EQ(m_figures.unsettled(), 0);
    for (std::size_t i = 0; i < quick.size(); ++i) {
        EXPECT_LE(plans()[i].cost, quick[i].cost);
        EXPECT_GE(plans()[i].bound, quick[i].bound);
    }
}

TEST_F(FigureDeskTest, PlansOnlyTheProfileThatChanged) {
    ASSERT_TRUE(settle());
    const std::vector<StickPlan> before = plans();
    ASSERT_TRUE(m_kit.desk().perform(dearer()));
    EXPECT_EQ(m_figures.unsettled(), 1);
    for (std::size_t i = 1; i < before.size(); ++i)
        EXPECT_EQ(plans()[i], before[i]) << "a settled plan stays, and so does its price";
    EXPECT_GT(plans().front().cost, before.front().cost);
}

TEST_F(FigureDeskTest, AChangeThatTouchesNoStickLeavesThePriceOfSticksAlone) {
    ASSERT_TRUE(settle());
    const std::vector<StickPlan> before = plans();
    Terms terms = m_kit.book().prices.terms();
    terms.overhead = terms.overhead + Percent::whole(1);
    ASSERT_TRUE(m_kit.desk().perform(putEdit(m_kit.book(), "Change overhead", terms)));
    EXPECT_TRUE(m_figures.settled());
    EXPECT_EQ(plans(), before);
}

TEST_F(FigureDeskTest, UndoComesBackToTheSettledPlans) {
    ASSERT_TRUE(settle());
    const std::vector<StickPlan> before = plans();
    ASSERT_TRUE(m_kit.desk().perform(dearer()));
    m_kit.desk().undoStack().undo();
    EXPECT_TRUE(m_figures.settled());
    EXPECT_EQ(plans(), before);
}

TEST_F(FigureDeskTest, AStoppedSearchKeepsWhatIsShownAndGoesOnWhenAsked) {
    const std::vector<StickPlan> quick = plans();
    QSignalSpy figured(&m_figures, &FigureDesk::figured);
    m_figures.stopSearch();
    EXPECT_EQ(figured.count(), 1);
    EXPECT_TRUE(m_figures.settled());
    EXPECT_EQ(m_figures.unsettled(), static_cast<int>(quick.size()));
    QTest::qWait(50);
    EXPECT_EQ(plans(), quick);
    m_figures.resumeSearch();
    EXPECT_FALSE(m_figures.settled());
    ASSERT_TRUE(settle());
    EXPECT_EQ(m_figures.unsettled(), 0);
}

TEST(StickMemory, FindsOnlyTheSameQuestion) {
    StickMemory memory;
    StickQuestion question;
    question.need.profile = Id<Profile>(3);
    StickPlan plan;
    plan.cost = Money::dollars(7);
    memory.keep(question, plan);
    ASSERT_NE(memory.find(question), nullptr);
    EXPECT_EQ(memory.find(question)->cost, Money::dollars(7));
    question.practice.kerf = Length::sixteenths(3);
    EXPECT_EQ(memory.find(question), nullptr);
}

TEST(StickMemory, ForgetsTheOldest) {
    StickMemory memory;
    StickQuestion first;
    for (int i = 1; i <= 300; ++i) {
        StickQuestion question;
        question.need.profile = Id<Profile>(3);
        question.need.lots = {{Length::inches(i), 1}};
        memory.keep(question, {});
        if (i == 1)
            first = question;
        if (i < 50) {
            EXPECT_NE(memory.find(first), nullptr);
        }
    }
    EXPECT_EQ(memory.find(first), nullptr);
}

} // namespace
} // namespace miterbook
