// SPDX-License-Identifier: GPL-3.0-or-later
#include "plan/outline.h"
#include "takeoff/forgotten.h"
#include "takeoff/forgotten_places.h"
#include "trim_kit.h"

namespace miterbook {
namespace {

using namespace kit;
using testing::ElementsAre;
using testing::IsEmpty;

Room drawnAt(std::int64_t id, const std::string& name, Length x) {
    Room row;
    row.id = Id<Room>(id);
    row.level = Id<Level>(1);
    row.name = name;
    EXPECT_TRUE(
        setOutline(row, {{x, {}}, {x + ft(12), {}}, {x + ft(12), ft(10)}, {x, ft(10)}}).ok());
    return row;
}

Opening standingAt(std::int64_t id, const std::string& mark, Length along) {
    Opening row = door(ft(2, 6));
    row.id = Id<Opening>(id);
    row.mark = mark;
    row.room = Id<Room>(1);
    row.wall = 1;
    row.along = along;
    return row;
}

std::vector<std::string> saidOfPlaces(const WholePlan& whole) {
    const PriceBook book = littleBook();
    Tally tally(whole, book);
    lookAtPlaces(tally);
    return warnings(tally.take());
}

TEST(ForgottenPlaces, OpeningsInOneAnotherAndPastTheEnd) {
    WholePlan whole = emptyPlan();
    whole.rooms = {drawnAt(1, "Den", {})};
    whole.openings = {
        standingAt(1, "D1", ft(4)), standingAt(2, "D2", ft(6)), standingAt(3, "D3", ft(11, 6))};
    EXPECT_THAT(saidOfPlaces(whole),
        ElementsAre("D2 and D1 stand in one another.", "D3 reaches past the end of its wall."));
    whole.openings = {standingAt(1, "D1", ft(4)), standingAt(2, "D2", ft(8))};
    EXPECT_THAT(saidOfPlaces(whole), IsEmpty());
}

TEST(ForgottenPlaces, RoomsOverEachOther) {
    WholePlan whole = emptyPlan();
    whole.rooms = {drawnAt(1, "Den", {}), drawnAt(2, "Hall", ft(11))};
    EXPECT_THAT(saidOfPlaces(whole), IsEmpty()); // walls that only touch or run alike do not cross
    whole.rooms[1].outline = {{ft(11), ft(2)}, {ft(20), ft(2)}, {ft(20), ft(8)}, {ft(11), ft(8)}};
    EXPECT_THAT(saidOfPlaces(whole), ElementsAre("Hall lies over Den on the drawing."));
    whole.rooms[1].level = Id<Level>(2);
    EXPECT_THAT(saidOfPlaces(whole), IsEmpty());
}

TEST(ForgottenPlaces, OpeningsWithoutAPlaceAreSaidOnce) {
    WholePlan whole = emptyPlan();
    whole.rooms = {drawnAt(1, "Den", {})};
    whole.openings = {standingAt(1, "D1", {}), standingAt(2, "D2", {})};
    EXPECT_THAT(saidOfPlaces(whole), IsEmpty()) << "a plan that is typed is not drawn";
    whole.openings.push_back(standingAt(3, "D3", ft(5)));
    EXPECT_THAT(
        saidOfPlaces(whole), ElementsAre("D1 and 1 more opening have no place on the drawing."));
}

TEST(Dismissed, RemindersStayAwayUntilTheySaySomethingElse) {
    Table<Dismissal> away;
    away.put({Id<Dismissal>(1), Id<Plan>(1), "Den has no door.", "by others"});
    const Remark reminder{Remark::Weight::warning, {}, "Den has no door."};
    Remark other = reminder;
    other.sentence = "Hall has no door.";
    Remark problem = reminder;
    problem.weight = Remark::Weight::problem;
    EXPECT_THAT(standing({reminder, other, problem}, away), ElementsAre(other, problem));
}

} // namespace
} // namespace miterbook
