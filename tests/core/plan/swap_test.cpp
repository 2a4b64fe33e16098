// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/profile_swaps.h"

#include "plan/whole_plan.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using testing::ElementsAre;
using testing::IsEmpty;

constexpr Id<Profile> a{1};
constexpr Id<Profile> b{2};
constexpr Id<Profile> c{3};
constexpr Id<Variant> first{10};
constexpr Id<Variant> second{11};

class Swaps : public testing::Test {
protected:
    Swaps() {
        m_first.id = first;
        m_first.name = "Oak";
        m_second.id = second;
        m_second.name = "Wide";
    }

    void add(Id<Variant> variant, Id<Profile> from, Id<Profile> to) {
        Swap swap;
        swap.id = Id<Swap>(static_cast<std::int64_t>(m_table.size()) + 1);
        swap.variant = variant;
        swap.from = from;
        swap.to = to;
        m_table.put(swap);
    }

    ProfileSwaps both() { return {m_table, {&m_first, &m_second}, m_remarks}; }

    Variant m_first;
    Variant m_second;
    Table<Swap> m_table;
    std::vector<std::string> m_remarks;
};

TEST_F(Swaps, LeaveOthersAndNoneAlone) {
    add(first, a, b);
    const ProfileSwaps swaps = both();
    EXPECT_EQ(swaps(a), b);
    EXPECT_EQ(swaps(c), c);
    EXPECT_EQ(swaps(Id<Profile>()), Id<Profile>());
}

TEST_F(Swaps, OfOneVariantHappenAtOnce) {
    add(first, a, b);
    add(first, b, a);
    const ProfileSwaps swaps = both();
    EXPECT_EQ(swaps(a), b);
    EXPECT_EQ(swaps(b), a);
    EXPECT_THAT(m_remarks, IsEmpty());
}

TEST_F(Swaps, OfTwoVariantsFollowEachOther) {
    add(first, a, b);
    add(second, b, c);
    const ProfileSwaps swaps = both();
    EXPECT_EQ(swaps(a), c);
    EXPECT_EQ(swaps(b), c);
}

TEST_F(Swaps, OfTheSameProfileConflictAndTheLaterWins) {
    add(first, a, b);
    add(second, a, c);
    EXPECT_EQ(both()(a), c);
    EXPECT_THAT(m_remarks,
        ElementsAre("Option Oak and option Wide both swap the same profile; Wide is used."));
}

TEST_F(Swaps, OfVariantsNotChosenDoNothing) {
    add(second, a, b);
    EXPECT_EQ(ProfileSwaps(m_table, {&m_first}, m_remarks)(a), a);
}

TEST_F(Swaps, ForNoProfileAreLeftOutWithARemark) {
    add(first, a, {});
    EXPECT_EQ(both()(a), a);
    EXPECT_THAT(
        m_remarks, ElementsAre("Option Oak swaps a profile for none; that swap is left out."));
}

TEST(SwapsInAPlan, ReachItsDefaultsAndEveryRowsOwnProfiles) {
    Plan plan;
    plan.id = Id<Plan>(1);
    plan.windowCasing = plan.doorCasing = plan.stool = plan.jamb = plan.base = plan.shoe
        = plan.crown = a;
    PlanRows rows;
    const auto put = [&](auto row) {
        row.id = Id<decltype(row)>(1);
        row.plan = plan.id;
        rows.of<decltype(row)>().put(row);
    };
    Variant variant;
    put(variant);
    Swap swap;
    swap.variant = Id<Variant>(1);
    swap.from = a;
    swap.to = b;
    put(swap);
    Room room;
    room.base = room.shoe = room.crown = room.chairRail = a;
    put(room);
    Opening opening;
    opening.casing = opening.stool = opening.cap = opening.mullCasing = a;
    put(opening);
    Closet closet;
    closet.shelf = closet.rod = closet.cleat = a;
    put(closet);
    Stair stair;
    stair.skirt = stair.handrail = a;
    put(stair);
    WallTreatment wall;
    wall.board = wall.cap = a;
    put(wall);
    OtherWork other;
    other.profile = a;
    put(other);

    const WholePlan whole = wholePlan(plan, rows, {{}, {Id<Variant>(1)}});
    const auto expectNoA = [](const auto& row) {
        using Row = std::remove_cvref_t<decltype(row)>;
        forEachField<Row>([&](const auto& each) {
            if constexpr (std::is_same_v<decltype(each.member), Id<Profile> Row::*>) {
                EXPECT_EQ(row.*each.member, b) << Describe<Row>::table << " " << each.name;
            }
        });
    };
    expectNoA(whole.plan);
    expectNoA(whole.rooms.at(0));
    expectNoA(whole.openings.at(0));
    expectNoA(whole.closets.at(0));
    expectNoA(whole.stairs.at(0));
    expectNoA(whole.treatments.at(0));
    expectNoA(whole.others.at(0));
}

} // namespace
} // namespace miterbook
