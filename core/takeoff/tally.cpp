// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/tally.h"

#include <algorithm>

namespace miterbook {

namespace {

/// Below this a hand at the piece comes within 6 in of the blade [from memory].
constexpr Length shortestSafe = Length::inches(8);

} // namespace

Tally::Tally(const WholePlan& plan, const PriceBook& prices)
    : m_plan(plan)
    , m_prices(prices)
    , m_practice(prices.practice())
    , m_style(prices.shop().lengths()) {
    for (const Level& level : plan.levels)
        m_levels.emplace(level.id, &level);
    for (const Room& room : plan.rooms)
        m_rooms.emplace(room.id, &room);
    m_takeoff.pieces.reserve(plan.openings.size() * 8 + plan.rooms.size() * 12);
    m_takeoff.tasks.reserve(plan.openings.size() * 4 + plan.rooms.size() * 3);
}

const Level* Tally::level(Id<Level> id) const {
    const auto it = m_levels.find(id);
    return it == m_levels.end() ? nullptr : it->second;
}

const Room* Tally::room(Id<Room> id) const {
    const auto it = m_rooms.find(id);
    return it == m_rooms.end() ? nullptr : it->second;
}

const Stock& Tally::stock(Id<Profile> id) {
    const auto [it, isNew] = m_stock.try_emplace(id);
    if (isNew) {
        it->second.profile = m_prices.profile(id);
        for (const Stick& stick : m_prices.stockedSticks(id))
            it->second.lengths.push_back(stick.length);
    }
    return it->second;
}

Source Tally::source(Origins row, Id<Level> level, Id<Room> room, const std::string& name) const {
    const Room* in = this->room(room);
    return {row, level || !in ? level : in->level, room, name};
}

Source Tally::sourceOf(const Opening& opening) const {
    static const std::string window = "window without a mark";
    static const std::string door = "door without a mark";
    const std::string& name = !opening.mark.empty() ? opening.mark
        : opening.isWindow()                        ? window
                                                    : door;
    return source(opening.id, opening.level, opening.room, name);
}

Source Tally::sourceOf(const Room& room) const {
    return source(room.id, room.level, room.id, room.name.empty() ? room.mark : room.name);
}

Source Tally::sourceOfPlan() const {
    return {m_plan.plan.id, {}, {}, m_plan.plan.name};
}

const Profile* Tally::usable(Id<Profile> id, const Source& source, std::string_view role) {
    if (!id) {
        problem(source,
            source.name + " has no profile for its " + std::string(role)
                + "; that is not counted.");
        return nullptr;
    }
    const Stock& known = stock(id);
    if (!known.profile) {
        problem(source,
            source.name + ": the profile of its " + std::string(role)
                + " is no longer in the book; that is not counted.");
        return nullptr;
    }
    if (known.lengths.empty() && std::ranges::find(m_said, id) == m_said.end()) {
        m_said.push_back(id);
        problem(source,
            "No stick of " + known.profile->name + " is stocked (" + std::string(role) + " of "
                + source.name + " and others).");
    }
    return known.profile;
}

void Tally::add(Piece piece) {
    checkLength(piece);
    m_takeoff.pieces.push_back(std::move(piece));
}

void Tally::checkLength(const Piece& piece) {
    if (piece.longPoint < shortestSafe && m_shortSaid != piece.source.row) {
        m_shortSaid = piece.source.row;
        warn(piece.source,
            piece.source.name + ": " + piece.part + " is only " + text(piece.longPoint)
                + " long; cut it from a longer piece, hands well away from the blade.");
    }
    const Length longest = stock(piece.profile).longest();
    const bool tooLong = longest > Length() && piece.longPoint > longest - m_practice.endTrim;
    if (tooLong && m_longSaid != piece.source.row) {
        m_longSaid = piece.source.row;
        problem(piece.source,
            piece.source.name + ": " + piece.part + " of " + text(piece.longPoint)
                + " does not come out of the longest stick stocked (" + stick(longest) + ").");
    }
}

void Tally::warn(const Source& source, std::string sentence) {
    m_takeoff.remarks.push_back({Remark::Weight::warning, source, std::move(sentence)});
}

void Tally::problem(const Source& source, std::string sentence) {
    m_takeoff.remarks.push_back({Remark::Weight::problem, source, std::move(sentence)});
}

} // namespace miterbook
