// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/sample_house.h"

#include "takeoff/forgotten.h"
#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;

/// The sample house with the little book; it names a rod, a cleat and a handrail of no profile.
struct Sample {
    PriceBook book = littleBook();
    IdSource ids{1000};
    SampleHouse house = sampleHouse(book, ids);
};

int openings(const WholePlan& whole, bool windows) {
    int count = 0;
    for (const Opening& opening : whole.openings)
        count += opening.isWindow() == windows ? opening.count : 0;
    return count;
}

TEST(SampleHouse, HasEighteenDoorsEighteenWindowsAndAStair) {
    const Sample sample;
    const WholePlan whole = sample.house.whole();
    EXPECT_EQ(openings(whole, false), 18);
    EXPECT_EQ(openings(whole, true), 18);
    EXPECT_EQ(whole.stairs.size(), 1U);
    EXPECT_TRUE(whole.remarks.empty());
}

TEST(SampleHouse, HasAboutSixHundredAndFiftyFeetOfBase) {
    const Sample sample;
    const Takeoff takeoff = takeOff(sample.house.whole(), sample.book, 2);
    EXPECT_NEAR(static_cast<double>(amount(takeoff, Task::base)) / 1000, 650, 10);
    EXPECT_EQ(amount(takeoff, Task::shoe), amount(takeoff, Task::base));
}

TEST(SampleHouse, HasNoProblemsAndNothingForgotten) {
    const Sample sample;
    EXPECT_THAT(problems(takeOff(sample.house.whole(), sample.book, 2)), testing::IsEmpty());
    EXPECT_THAT(forgotten(sample.house.whole(), sample.book), testing::IsEmpty());
}

TEST(SampleHouse, CountsItsDoorsByKind) {
    const Sample sample;
    const Takeoff takeoff = takeOff(sample.house.whole(), sample.book, 2);
    EXPECT_EQ(amount(takeoff, Task::prehungDoor), 13000);
    EXPECT_EQ(amount(takeoff, Task::bifoldOrBypassDoor), 2000);
    EXPECT_EQ(amount(takeoff, Task::doubleDoor), 1000);
    EXPECT_EQ(amount(takeoff, Task::exteriorDoor), 2000);
    EXPECT_EQ(amount(takeoff, Task::stoolAndApronWindow), 9000);
    EXPECT_EQ(amount(takeoff, Task::pictureFrameWindow), 9000);
    EXPECT_EQ(amount(takeoff, Task::trip), 2000);
}

TEST(SampleHouse, ElevationAndOptionChangeIt) {
    const Sample sample;
    const WholePlan changed = sample.house.whole(
        {sample.house.elevation, {sample.house.crownPack}});
    EXPECT_EQ(openings(changed, true), 19);
    const Takeoff base = takeOff(sample.house.whole(), sample.book, 0);
    const Takeoff takeoff = takeOff(changed, sample.book, 0);
    EXPECT_EQ(amount(base, Task::largeCrown), 0);
    EXPECT_EQ(amount(takeoff, Task::largeCrown), 134000); // 2 x (22 + 18) + 2 x (14 + 13) ft
    EXPECT_EQ(amount(takeoff, Task::base), amount(base, Task::base));
}

} // namespace
} // namespace miterbook
