// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/takeoff.h"

#include "takeoff/closets.h"
#include "takeoff/openings.h"
#include "takeoff/room_runs.h"
#include "takeoff/stairs.h"
#include "takeoff/treatments.h"

namespace miterbook {

namespace {

void takeTrips(int trips, Tally& tally) {
    if (trips > 0)
        tally.add(TaskCount{
            PieceOfWork::trips, Task::trip, Quantity::count(trips), {}, tally.sourceOfPlan(), {}});
}

void takeRooms(const std::vector<Room>& rooms, Tally& tally) {
    checkPlanRuns(tally);
    const DoorGaps gaps(tally);
    for (const Room& room : rooms)
        takeRoom(room, gaps, tally);
}

} // namespace

Takeoff takeOff(const WholePlan& plan, const PriceBook& prices, int trips) {
    Tally tally(plan, prices);
    for (const std::string& remark : plan.remarks)
        tally.warn(tally.sourceOfPlan(), remark);
    for (const Opening& opening : plan.openings)
        takeOpening(opening, tally);
    takeRooms(plan.rooms, tally);
    for (const Closet& closet : plan.closets)
        takeCloset(closet, tally);
    for (const Stair& stair : plan.stairs)
        takeStair(stair, tally);
    for (const WallTreatment& treatment : plan.treatments)
        takeTreatment(treatment, tally);
    for (const OtherWork& other : plan.others)
        takeOtherWork(other, tally);
    takeTrips(trips, tally);
    return tally.take();
}

} // namespace miterbook
