// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/takeoff.h"

namespace miterbook {

/// Running feet of one profile in one piece of work, with what each row of the plan adds to it.
struct ProfileTotal {
    struct Share {
        Source source;
        Length running; ///< long points of its pieces
        int pieces = 0;

        bool operator==(const Share&) const = default;
    };
    PieceOfWork work = PieceOfWork::windows;
    Id<Profile> profile;
    Length running;
    int pieces = 0;
    std::vector<Share> shares; ///< in plan order; they add up to `running` and `pieces`

    bool operator==(const ProfileTotal&) const = default;
};

/// An amount of one task, with what each row adds to it.
struct TaskTotal {
    struct Share {
        Source source;
        Quantity quantity;

        bool operator==(const Share&) const = default;
    };
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    Quantity quantity; ///< in unitOf(task)
    std::vector<Share> shares;

    bool operator==(const TaskTotal&) const = default;
};

/// Goods by the each, with what each row adds to them.
struct PartTotal {
    struct Share {
        Source source;
        int count = 0;

        bool operator==(const Share&) const = default;
    };
    PieceOfWork work = PieceOfWork::hardware;
    PartUse use = PartUse::other;
    int count = 0;
    std::vector<Share> shares;

    bool operator==(const PartTotal&) const = default;
};

/// What a takeoff comes to, in piece of work order, then profile, task or part.
struct Totals {
    std::vector<ProfileTotal> profiles;
    std::vector<TaskTotal> tasks;
    std::vector<PartTotal> parts;

    bool empty() const { return profiles.empty() && tasks.empty() && parts.empty(); }
    bool operator==(const Totals&) const = default;
};

/// The totals of one room of one level; no room: of what stands on the level in none of its rooms;
/// no level either: of what belongs to the whole plan.
struct PlaceTotals {
    Id<Level> level;
    Id<Room> room;
    Totals totals;

    bool operator==(const PlaceTotals&) const = default;
};

/// Over the whole takeoff.
Totals totals(const Takeoff& takeoff);

/// By level and room in plan order, each level's roomless remainder after its rooms, the whole
/// plan's last. Places with nothing are left out. The places add up to totals() exactly.
std::vector<PlaceTotals> totalsByPlace(const Takeoff& takeoff, const WholePlan& plan);

} // namespace miterbook
