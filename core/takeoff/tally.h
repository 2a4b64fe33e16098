// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/amount_text.h"
#include "takeoff/takeoff.h"

#include <unordered_map>

namespace miterbook {

/// What the book knows of one profile: the profile itself and its stocked lengths, shortest first.
struct Stock {
    const Profile* profile = nullptr; ///< none: not in the book
    std::vector<Length> lengths;

    Length longest() const { return lengths.empty() ? Length() : lengths.back(); }
};

/// One takeoff being counted: what is asked of plan and book, and what has been counted so far.
class Tally {
public:
    Tally(const WholePlan& plan, const PriceBook& prices);
    Tally(const Tally&) = delete;
    Tally& operator=(const Tally&) = delete;

    const WholePlan& plan() const { return m_plan; }
    const Practice& practice() const { return m_practice; }
    const Level* level(Id<Level> id) const;
    const Room* room(Id<Room> id) const;
    const Stock& stock(Id<Profile> id);

    Source sourceOf(const Opening& opening) const;
    Source sourceOf(const Room& room) const;
    Source sourceOfPlan() const;
    template <class Row>
    Source sourceOf(const Row& row) const {
        return source(row.id, row.level, row.room, row.name);
    }

    /// A profile that pieces can be counted of; nullptr with a problem when `role` ("casing") has
    /// none, or when it is not in the book. Says once of each profile when no stick is stocked.
    const Profile* usable(Id<Profile> id, const Source& source, std::string_view role);

    void add(Piece piece);
    void add(RunCorners run) { m_takeoff.runs.push_back(std::move(run)); }
    void add(TaskCount task) { m_takeoff.tasks.push_back(std::move(task)); }
    void add(PartCount part) { m_takeoff.parts.push_back(std::move(part)); }
    void add(BoughtGoods goods) { m_takeoff.goods.push_back(std::move(goods)); }
    /// A piece that is made from a longer one whatever its length: not warned of as short.
    void addReturn(Piece piece) { m_takeoff.pieces.push_back(std::move(piece)); }
    void warn(const Source& source, std::string sentence);
    void problem(const Source& source, std::string sentence);

    /// A length as the shop writes it, with its unit.
    std::string text(Length length) const { return formatLengthWithUnit(length, m_style); }
    /// A stick as the trade says it.
    std::string stick(Length length) const { return stickText(length, m_style.unit); }

    Takeoff take() { return std::move(m_takeoff); }

private:
    Source source(Origins row, Id<Level> level, Id<Room> room, const std::string& name) const;
    void checkLength(const Piece& piece);

    const WholePlan& m_plan;
    const PriceBook& m_prices;
    const Practice& m_practice;
    LengthStyle m_style;
    std::unordered_map<Id<Level>, const Level*> m_levels;
    std::unordered_map<Id<Room>, const Room*> m_rooms;
    std::unordered_map<Id<Profile>, Stock> m_stock;
    std::vector<Id<Profile>> m_said; ///< profiles whose lack has been said
    Origins m_shortSaid;             ///< last row warned of for a short piece
    Origins m_longSaid;              ///< last row with a piece no stick is long enough for
    Takeoff m_takeoff;
};

} // namespace miterbook
