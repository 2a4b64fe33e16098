// SPDX-License-Identifier: GPL-3.0-or-later
// Walking order: as the plan has the openings until they are numbered otherwise.
#include "core/cut/saw_kit.h"
#include "cut/opening_units.h"

#include <numeric>
#include <random>

using namespace miterbook;
using namespace miterbook::kit;

namespace {

std::vector<std::string> namesOf(const SawHouse& house) {
    std::vector<std::string> names;
    for (const OpeningUnit& unit : openingUnits(house.whole, house.measures))
        names.push_back(unit.name);
    return names;
}

SawHouse sixWindows() {
    SawHouse house;
    for (int i = 1; i <= 6; ++i)
        house.add(window(in(36), in(60)), "W" + std::to_string(i));
    return house;
}

/// Numbers the opening at a rank anew, as the table of measures does.
void number(SawHouse& house, int from, int to) {
    const auto units = openingUnits(house.whole, house.measures);
    const OpeningUnit& unit = units[static_cast<std::size_t>(from - 1)];
    Measure row = unit.measure;
    if (!row.id)
        row.id = house.ids.next<Measure>();
    row.position = placeFor(units, unit, to);
    house.put(row);
}

} // namespace

TEST(WalkingOrder, IsThePlansUntilItIsNumbered) {
    SawHouse house = sixWindows();
    EXPECT_EQ(namesOf(house), (std::vector<std::string>{"W1", "W2", "W3", "W4", "W5", "W6"}));
    // One that is measured first stays where it stands.
    number(house, 5, 5);
    EXPECT_EQ(namesOf(house)[4], "W5");
    const auto units = openingUnits(house.whole, house.measures);
    for (std::size_t i = 0; i < units.size(); ++i)
        EXPECT_EQ(units[i].number, static_cast<int>(i) + 1);
}

TEST(WalkingOrder, FollowsTheNumbersTyped) {
    SawHouse house = sixWindows();
    number(house, 5, 2);
    EXPECT_EQ(namesOf(house), (std::vector<std::string>{"W1", "W5", "W2", "W3", "W4", "W6"}));
    number(house, 1, 6);
    EXPECT_EQ(namesOf(house), (std::vector<std::string>{"W5", "W2", "W3", "W4", "W6", "W1"}));
    number(house, 4, 1);
    EXPECT_EQ(namesOf(house), (std::vector<std::string>{"W4", "W5", "W2", "W3", "W6", "W1"}));
    number(house, 2, 99);
    EXPECT_EQ(namesOf(house).back(), "W5");
}

TEST(WalkingOrder, TakesAWholeColumnOfNumbersAtOnce) {
    std::mt19937 random(3);
    for (int round = 0; round < 50; ++round) {
        SawHouse house = sixWindows();
        const auto units = openingUnits(house.whole, house.measures);
        std::vector<int> wanted(units.size());
        std::iota(wanted.begin(), wanted.end(), 1);
        std::ranges::shuffle(wanted, random);
        std::vector<std::string> expected(units.size());
        for (std::size_t i = 0; i < units.size(); ++i) {
            Measure row = units[i].measure;
            row.id = house.ids.next<Measure>();
            row.position = placeFor(units, units[i], wanted[i]);
            house.put(row);
            expected[static_cast<std::size_t>(wanted[i] - 1)] = units[i].name;
        }
        EXPECT_EQ(namesOf(house), expected);
    }
}
