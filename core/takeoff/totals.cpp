// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/totals.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

/// Gathers the totals of one place. Rows come in plan order, so a row's shares follow each other.
class Gatherer {
public:
    void add(const Piece& piece) {
        ProfileTotal& total = m_profiles[{piece.work, piece.profile}];
        total.work = piece.work;
        total.profile = piece.profile;
        const Length running = piece.longPoint * piece.count;
        total.running += running;
        total.pieces += piece.count;
        auto& share = shareOf(total.shares, piece.source);
        share.running += running;
        share.pieces += piece.count;
    }

    void add(const TaskCount& count) {
        TaskTotal& total = m_tasks[{count.work, count.task}];
        total.work = count.work;
        total.task = count.task;
        total.quantity += count.quantity;
        shareOf(total.shares, count.source).quantity += count.quantity;
    }

    void add(const PartCount& part) {
        PartTotal& total = m_parts[{part.work, part.use}];
        total.work = part.work;
        total.use = part.use;
        total.count += part.count;
        shareOf(total.shares, part.source).count += part.count;
    }

    Totals take() {
        Totals result;
        const auto move = [](auto& from, auto& to) {
            to.reserve(from.size());
            for (auto& [key, total] : from)
                to.push_back(std::move(total));
        };
        move(m_profiles, result.profiles);
        move(m_tasks, result.tasks);
        move(m_parts, result.parts);
        return result;
    }

private:
    template <class Share>
    static Share& shareOf(std::vector<Share>& shares, const Source& source) {
        if (shares.empty() || shares.back().source.row != source.row)
            shares.emplace_back().source = source;
        return shares.back();
    }

    std::map<std::pair<PieceOfWork, Id<Profile>>, ProfileTotal> m_profiles;
    std::map<std::pair<PieceOfWork, Task>, TaskTotal> m_tasks;
    std::map<std::pair<PieceOfWork, PartUse>, PartTotal> m_parts;
};

template <class Sink>
void eachCount(const Takeoff& takeoff, Sink&& sink) {
    for (const Piece& piece : takeoff.pieces)
        sink(piece);
    for (const TaskCount& task : takeoff.tasks)
        sink(task);
    for (const PartCount& part : takeoff.parts)
        sink(part);
}

using Place = std::pair<Id<Level>, Id<Room>>;

/// The level that a row names, or none where the plan has no such level.
Id<Level> levelIn(const WholePlan& plan, Id<Level> level) {
    return plan.level(level) ? level : Id<Level>();
}

Place placeOf(const WholePlan& plan, const Source& source) {
    const Room* room = source.room ? plan.room(source.room) : nullptr;
    if (room)
        return {levelIn(plan, room->level), room->id};
    return {levelIn(plan, source.level), Id<Room>()};
}

/// All places of a plan in the order they are shown; rooms of no level after all levels.
std::vector<Place> placesOf(const WholePlan& plan) {
    std::vector<Place> places;
    const auto addRooms = [&](Id<Level> level) {
        for (const Room& room : plan.rooms) {
            if (levelIn(plan, room.level) == level)
                places.emplace_back(level, room.id);
        }
    };
    for (const Level& level : plan.levels) {
        addRooms(level.id);
        places.emplace_back(level.id, Id<Room>());
    }
    addRooms({});
    places.emplace_back(Id<Level>(), Id<Room>());
    return places;
}

} // namespace

Totals totals(const Takeoff& takeoff) {
    Gatherer gatherer;
    eachCount(takeoff, [&](const auto& count) { gatherer.add(count); });
    return gatherer.take();
}

std::vector<PlaceTotals> totalsByPlace(const Takeoff& takeoff, const WholePlan& plan) {
    std::map<Place, Gatherer> gatherers;
    eachCount(
        takeoff, [&](const auto& count) { gatherers[placeOf(plan, count.source)].add(count); });
    std::vector<PlaceTotals> result;
    for (const Place& place : placesOf(plan)) {
        if (const auto it = gatherers.find(place); it != gatherers.end())
            result.push_back({place.first, place.second, it->second.take()});
    }
    return result;
}

} // namespace miterbook
