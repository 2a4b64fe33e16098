// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/flight.h"
#include "plan/outline.h"
#include "plan/plan_checks.h"

#include <gmock/gmock.h>

using namespace miterbook;
using testing::HasSubstr;

namespace {

constexpr PlanPoint at(int x, int y) {
    return {Length::inches(x), Length::inches(y)};
}

Stair stairAlong(std::vector<PlanPoint> line, int risers = 14) {
    Stair stair;
    stair.name = "Main stair";
    stair.risers = risers;
    stair.walkLine = std::move(line);
    return stair;
}

} // namespace

/// A straight flight of n risers has n - 1 treads: common practice of stair layout [cp].
TEST(Flight, StraightHasATreadLessThanRisers) {
    const FlightDrawing flight = flightOf(stairAlong({at(0, 0), at(130, 0)}));
    ASSERT_EQ(flight.risers.size(), 14U);
    ASSERT_EQ(flight.parts.size(), 1U);
    EXPECT_EQ(flight.parts[0], (Outline{at(0, -18), at(130, -18), at(130, 18), at(0, 18)}));
    for (int i = 0; i < 14; ++i) {
        const FlightDrawing::Riser& riser = flight.risers[static_cast<std::size_t>(i)];
        EXPECT_EQ(riser.a, at(10 * i, -18)) << i;
        EXPECT_EQ(riser.b, at(10 * i, 18)) << i;
    }
    EXPECT_FALSE(flight.risers.front().above);
    EXPECT_TRUE(flight.risers.back().above);
    EXPECT_EQ(flight.arrow[1], at(130, 0));
}

TEST(Flight, TurnsOverASquareLanding) {
    // Up 60 in to the middle of the landing, then 60 in to the right.
    const FlightDrawing flight = flightOf(stairAlong({at(0, 0), at(0, -78), at(78, -78)}, 12));
    ASSERT_EQ(flight.parts.size(), 3U);
    EXPECT_EQ(areaOf(flight.parts[1]), Quantity::count(9)); // 36 x 36 in
    EXPECT_TRUE(encloses(flight.parts[1], at(0, -78)));
    ASSERT_EQ(flight.risers.size(), 12U);
    EXPECT_EQ(flight.risers[5].a.y, Length::inches(-60)); // the sixth leads onto the landing
    EXPECT_EQ(flight.risers[6].a.x, Length::inches(18));
    EXPECT_TRUE(isOn(flight, at(0, -30)));
    EXPECT_TRUE(isOn(flight, at(40, -78)));
    EXPECT_FALSE(isOn(flight, at(40, -30)));
}

TEST(Flight, RisersAreSharedOutWhateverTheLegs) {
    for (int risers = 0; risers <= 40; ++risers) {
        for (const int leg : {40, 77, 150}) {
            const auto flight = flightOf(
                stairAlong({at(0, 0), at(100, 0), at(100, leg), at(10, leg)}, risers));
            EXPECT_EQ(flight.risers.size(), static_cast<std::size_t>(risers)) << leg;
        }
    }
}

/// Back beside itself over a landing twice as wide: nothing is left of the leg between.
TEST(Flight, DoublesBack) {
    const auto flight = flightOf(stairAlong({at(0, 0), at(0, -100), at(36, -100), at(36, 0)}, 16));
    EXPECT_EQ(flight.risers.size(), 16U);
    EXPECT_EQ(flight.parts.size(), 4U); // two flights, two landings
}

TEST(Flight, IsNoneWithoutAPlace) {
    const FlightDrawing flight = flightOf(stairAlong({}));
    EXPECT_TRUE(flight.parts.empty());
    EXPECT_TRUE(flight.risers.empty());
    EXPECT_FALSE(isOn(flight, at(0, 0)));
}

TEST(Flight, LinesThatAreNoneAreRefused) {
    const auto refusal = [](std::vector<PlanPoint> line, Length width = Length::inches(36)) {
        Stair stair = stairAlong(std::move(line));
        stair.flightWidth = width;
        const auto checked = checkStair(stair, Missing::allowed);
        return checked ? std::string() : checked.error().sentence;
    };
    EXPECT_EQ(refusal({}), "");
    EXPECT_EQ(refusal({at(0, 0), at(130, 0)}), "");
    EXPECT_THAT(refusal({at(0, 0)}), HasSubstr("from its foot to its head"));
    EXPECT_THAT(refusal({at(0, 0), at(0, 0)}), HasSubstr("at one place"));
    EXPECT_THAT(refusal({at(0, 0), at(13'000, 0)}), HasSubstr("300 ft"));
    EXPECT_THAT(refusal(std::vector<PlanPoint>(30)), HasSubstr("turns too often"));
    EXPECT_THAT(refusal({at(0, 0), at(130, 0)}, Length()), HasSubstr("flight width"));
}
