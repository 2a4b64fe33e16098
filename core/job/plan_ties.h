// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"
#include "job/plan_stamp.h"

#include <map>
#include <vector>

namespace miterbook {

/// How the rows of a house hang together with those of the builder's plan as it now is, with the
/// elevation and options that the house was started with. Where a house has no ties, rows of the
/// same kind and name are taken to belong together.
class PlanTies {
public:
    PlanTies(const Book& book, const House& house);

    const WholePlan& whole() const { return m_whole; }
    const std::vector<PlanTie>& all() const { return m_ties; }

    template <class Row>
    const PlanTie* ofSource(Id<Row> id) const {
        return find(m_bySource, Describe<Row>::table, id.value());
    }
    template <class Row>
    const PlanTie* ofOwn(Id<Row> id) const {
        return find(m_byOwn, Describe<Row>::table, id.value());
    }

    /// A row of the builder's plan with its level and rooms as the house has them.
    template <class Row>
    Row asOwn(Row row) const {
        const auto move = [&]<class Kind>(Id<Kind>& reference) {
            const PlanTie* tie = ofSource(reference);
            reference = tie ? Id<Kind>(tie->own) : Id<Kind>();
        };
        if constexpr (requires { row.level; })
            move(row.level);
        if constexpr (requires { row.room; })
            move(row.room);
        if constexpr (requires { row.otherRoom; })
            move(row.otherRoom);
        return row;
    }

    /// The house now has the builder's row as it is, under `own`; none: it does without.
    template <class Row>
    void tie(const Row& planned, Id<Row> own) {
        put(std::string(Describe<Row>::table), own.value(), planned.id.value(), stampOf(planned));
    }
    /// The house's row hangs on nothing any more; where it is gone itself, so is its tie.
    template <class Row>
    void loosen(Id<Row> own, bool gone) {
        loosen(std::string(Describe<Row>::table), own.value(), gone);
    }

    /// Calls fn for the builder's levels, rooms, openings and so on, in the order in which one may
    /// refer to another.
    template <class Fn>
    void forEachList(Fn&& fn) const {
        fn(m_whole.levels);
        fn(m_whole.rooms);
        fn(m_whole.openings);
        fn(m_whole.closets);
        fn(m_whole.stairs);
        fn(m_whole.treatments);
        fn(m_whole.others);
    }

private:
    using Key = std::pair<std::string, std::int64_t>;
    using Places = std::map<Key, std::size_t>;

    const PlanTie* find(const Places& places, std::string_view kind, std::int64_t id) const;
    void put(std::string kind, std::int64_t own, std::int64_t source, std::int64_t stamp);
    void loosen(const std::string& kind, std::int64_t own, bool gone);
    void note(const PlanTie& tie);
    template <class Row>
    void guess(const std::vector<Row>& planned, const Table<Row>& own);

    Id<Plan> m_plan;
    WholePlan m_whole;
    std::vector<PlanTie> m_ties;
    Places m_bySource;
    Places m_byOwn;
};

} // namespace miterbook
