// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/room_runs.h"

#include "takeoff/conditions.h"
#include "takeoff/wall_run.h"

#include <algorithm>

namespace miterbook {

namespace {

Id<Profile> chosen(RunChoice choice, Id<Profile> plan, Id<Profile> own) {
    switch (choice) {
    case RunChoice::plan:
        return plan;
    case RunChoice::own:
        return own;
    case RunChoice::none:
        break;
    }
    return {};
}

/// Crown by its face width: to 2 1/4, to 3 1/2, over.
Task crownTask(const Profile& profile) {
    if (profile.width <= Length::sixteenths(36))
        return Task::smallCrown;
    return profile.width <= Length::sixteenths(56) ? Task::mediumCrown : Task::largeCrown;
}

std::vector<WallLength> crownWalls(const Room& room) {
    std::vector<WallLength> walls;
    for (const Wall& wall : room.walls)
        walls.push_back(wholeWall(wall.crown ? wall.length : Length()));
    return walls;
}

/// Counts the runs of one room.
class RoomCutter {
public:
    RoomCutter(const Room& room, Tally& tally)
        : m_room(room)
        , m_tally(tally)
        , m_source(tally.sourceOf(room)) {}

    void cut(const std::vector<DoorGap>& gaps) {
        cutBase(gaps);
        if (m_room.walls.empty())
            return;
        if (m_room.chairRail)
            take(PieceOfWork::wallTreatment, "chair rail", RunChoice::own, m_room.chairRail,
                wallsLessDoors(m_room, gaps, Breaks::none, m_tally).walls, {});
        take(PieceOfWork::crown, "crown", m_room.crownChoice,
            chosen(m_room.crownChoice, m_tally.plan().plan.crown, m_room.crown), crownWalls(m_room),
            {});
    }

private:
    void cutBase(const std::vector<DoorGap>& gaps) {
        const Plan& plan = m_tally.plan().plan;
        const Id<Profile> base = chosen(m_room.baseChoice, plan.base, m_room.base);
        const Id<Profile> shoe = chosen(shoeChoice(), plan.shoe, m_room.shoe);
        const bool wanted = base || shoe || m_room.baseChoice == RunChoice::own
            || m_room.shoeChoice == RunChoice::own;
        if (!hasLength() || !wanted)
            return;
        const WallLengths lengths = wallsLessDoors(m_room, gaps, Breaks::asSaid, m_tally);
        for (const std::string& remark : lengths.remarks)
            m_tally.warn(m_source, m_source.name + ": " + remark);
        take(PieceOfWork::base, "base", m_room.baseChoice, base, lengths.walls, m_room.extraBase);
        take(PieceOfWork::base, "shoe", shoeChoice(), shoe, shoeWalls(lengths.walls),
            m_room.extraBase);
    }

    std::vector<WallLength> shoeWalls(std::vector<WallLength> walls) const {
        for (std::size_t i = 0; i < walls.size(); ++i) {
            if (!m_room.walls[i].shoe)
                walls[i] = {};
        }
        return walls;
    }

    /// A room without base gets the plan's shoe neither.
    RunChoice shoeChoice() const {
        const bool follows = m_room.baseChoice == RunChoice::none
            && m_room.shoeChoice == RunChoice::plan;
        return follows ? RunChoice::none : m_room.shoeChoice;
    }

    bool hasLength() const { return !m_room.walls.empty() || m_room.extraBase > Length(); }

    void take(PieceOfWork work, std::string_view label, RunChoice choice, Id<Profile> profile,
        const std::vector<WallLength>& walls, Length extra) {
        if (choice == RunChoice::none || (choice == RunChoice::plan && !profile))
            return;
        WallRun run{work, label, m_source, profile, m_tally.usable(profile, m_source, label)};
        if (!run.stock)
            return;
        const Length net = takeWallRun(run, m_room, walls, extra, m_tally);
        if (net > Length())
            addTask(run, net);
    }

    void addTask(const WallRun& run, Length net) {
        TaskCount task;
        task.work = run.work;
        task.task = run.label == "base" ? Task::base
            : run.label == "shoe"       ? Task::shoe
            : run.label == "crown"      ? crownTask(*run.stock)
                                        : Task::chairRail;
        task.quantity = Quantity::runningFeet(net);
        task.conditions = conditionsFor(m_tally, m_source, run.stock);
        if (run.work != PieceOfWork::crown) // the rest is worked from the floor
            dropCeiling(task.conditions);
        if (task.task == Task::base && m_room.builtUpBase)
            task.conditions.add(Condition::builtUpBase);
        task.source = m_source;
        m_tally.add(std::move(task));
    }

    const Room& m_room;
    Tally& m_tally;
    Source m_source;
};

} // namespace

void takeRoom(const Room& room, const DoorGaps& gaps, Tally& tally) {
    RoomCutter(room, tally).cut(gaps.of(room.id));
}

void checkPlanRuns(Tally& tally) {
    const Plan& plan = tally.plan().plan;
    const auto& rooms = tally.plan().rooms;
    const bool base = std::ranges::any_of(rooms,
        [](const Room& room) { return room.baseChoice == RunChoice::plan && !room.walls.empty(); });
    const bool crown = std::ranges::any_of(rooms, [](const Room& room) {
        return room.crownChoice == RunChoice::plan && !room.walls.empty();
    });
    if (base && !plan.base)
        tally.problem(tally.sourceOfPlan(),
            "Plan " + plan.name + " has no base profile; rooms that go by it are counted without.");
    if (crown && !plan.crown)
        tally.problem(tally.sourceOfPlan(),
            "Plan " + plan.name
                + " has no crown profile; rooms that go by it are counted without.");
}

} // namespace miterbook
