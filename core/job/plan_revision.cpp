// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/plan_revision.h"

#include "job/plan_ties.h"
#include "job/remove_opening.h"
#include "job/value_text.h"

#include <algorithm>
#include <set>

namespace miterbook {

namespace {

/// What is never taken over: which row it is and where it stands.
bool isPlace(std::string_view field) {
    return field == "id" || field == "plan" || field == "position" || field == "variant"
        || field == "replaces" || field == "set" || field == "house";
}

template <class Row>
std::string whatIs(const Row& row) {
    std::string name;
    if constexpr (requires { row.name; })
        name = row.name;
    if constexpr (requires { row.mark; })
        name = name.empty() ? row.mark : name;
    std::string what(Describe<Row>::noun);
    return name.empty() ? what : what + " \"" + name + "\"";
}

/// Goes through a house's plan and the builder's side by side.
class Comparison {
public:
    Comparison(const Book& book, const House& house)
        : m_book(book)
        , m_house(house)
        , m_own(book.sheet(house.work))
        , m_ties(book, house) {}

    std::vector<PlanRevision> revisions() {
        const WholePlan& whole = m_ties.whole();
        if (const Plan* work = m_book.plan(m_house.work))
            compare(whole.plan, work);
        m_ties.forEachList([&]<class Row>(const std::vector<Row>& rows) { compareAll(rows); });
        return std::move(m_revisions);
    }

private:
    template <class Row>
    void compareAll(const std::vector<Row>& rows) {
        const Table<Row>& own = m_own.of<Row>();
        for (const Row& row : rows) {
            const PlanTie* tie = m_ties.ofSource<Row>(row.id);
            if (!tie)
                add(PlanRevision::Kind::added, row, 0, row.id.value(), {});
            else if (const Row* mine = own.find(Id<Row>(tie->own)))
                compare(row, mine);
        }
        for (const auto& [id, mine] : own) {
            const PlanTie* tie = m_ties.ofOwn<Row>(id);
            const bool gone = tie && tie->source != 0
                && std::ranges::find(rows, Id<Row>(tie->source), &Row::id) == rows.end();
            if (gone)
                add(PlanRevision::Kind::removed, mine, id.value(), tie->source, {});
        }
    }

    template <class Row>
    void compare(const Row& planned, const Row* mine) {
        const PlanTie* tie = m_ties.ofSource<Row>(planned.id);
        if (!tie || tie->stamp == stampOf(planned))
            return;
        const Row as = m_ties.asOwn(planned);
        std::vector<PlanRevision::Difference> differences;
        forEachField<Row>([&](const auto& field) {
            if (isPlace(field.name) || as.*field.member == mine->*field.member)
                return;
            differences.push_back(
                {spacedName(field.name), valueText(mine->*field.member, m_book, m_house.work),
                    valueText(as.*field.member, m_book, m_house.work)});
        });
        if (!differences.empty())
            add(PlanRevision::Kind::changed, planned, mine->id.value(), planned.id.value(),
                std::move(differences));
    }

    template <class Row>
    void add(PlanRevision::Kind kind, const Row& row, std::int64_t own, std::int64_t source,
        std::vector<PlanRevision::Difference> differences) {
        m_revisions.push_back({kind, std::string(Describe<Row>::table), own, source, whatIs(row),
            std::move(differences)});
    }

    const Book& m_book;
    const House& m_house;
    const SheetRows& m_own;
    PlanTies m_ties;
    std::vector<PlanRevision> m_revisions;
};

/// Takes revisions into a house, or notes that it keeps its own.
class Reviser {
public:
    Reviser(const Book& book, IdSource& ids, const House& house)
        : m_book(book)
        , m_ids(ids)
        , m_house(house)
        , m_ties(book, house)
        , m_edit(book, "Take over the revised plan") {}

    Edit edit(const std::vector<PlanRevision>& taken, const std::vector<PlanRevision>& kept) {
        m_taken = &taken;
        m_kept = &kept;
        const WholePlan& whole = m_ties.whole();
        revise(std::vector<Plan>{whole.plan});
        m_ties.forEachList([&]<class Row>(const std::vector<Row>& rows) { revise(rows); });
        m_ties.forEachList([&]<class Row>(const std::vector<Row>&) { letGo<Row>(); });
        putTies();
        Edit edit = m_edit.take();
        if (taken.empty())
            edit.sentence = "Keep the house as it is";
        return edit;
    }

private:
    /// Those that tie nothing any more go; those that were only guessed are kept from now on.
    void putTies() {
        for (PlanTie tie : m_ties.all()) {
            const bool loose = tie.own == 0 && tie.source == 0;
            if (loose && tie.id)
                m_edit.remove(tie.id);
            if (loose)
                continue;
            if (!tie.id)
                tie.id = m_ids.next<PlanTie>();
            m_edit.put(std::move(tie));
        }
    }

    template <class Row>
    static const PlanRevision* find(
        const std::vector<PlanRevision>& list, PlanRevision::Kind kind, std::int64_t source) {
        const auto it = std::ranges::find_if(list, [&](const PlanRevision& each) {
            return each.kind == kind && each.source == source && each.table == Describe<Row>::table;
        });
        return it == list.end() ? nullptr : &*it;
    }

    template <class Row>
    void revise(const std::vector<Row>& rows) {
        using enum PlanRevision::Kind;
        for (const Row& row : rows) {
            const std::int64_t source = row.id.value();
            if (find<Row>(*m_taken, added, source))
                m_ties.tie(row, put(row, m_ids.next<Row>()));
            else if (find<Row>(*m_kept, added, source))
                m_ties.tie(row, Id<Row>());
            const PlanRevision* taken = find<Row>(*m_taken, changed, source);
            if (taken)
                m_ties.tie(row, put(row, Id<Row>(taken->own)));
            else if (const PlanRevision* kept = find<Row>(*m_kept, changed, source))
                m_ties.tie(row, Id<Row>(kept->own));
        }
        for (const PlanRevision& each : *m_taken) {
            if (each.kind == removed && each.table == Describe<Row>::table)
                removeOwn(Id<Row>(each.own));
        }
        for (const PlanRevision& each : *m_kept) {
            if (each.kind == removed && each.table == Describe<Row>::table)
                m_ties.loosen(Id<Row>(each.own), false); // it is the house's own from now on
        }
    }

    /// The builder's row under an id of the house; its place in its table stays.
    template <class Row>
    Id<Row> put(const Row& planned, Id<Row> id) {
        Row row = m_ties.asOwn(planned);
        const Row* present = findRow(m_book, id);
        row.id = id;
        if constexpr (requires { row.plan; })
            row.plan = m_house.work;
        if constexpr (requires { row.replaces; }) {
            row.variant = {};
            row.replaces = {};
        }
        if constexpr (requires { row.position; })
            row.position = present ? present->position : row.position;
        if constexpr (std::is_same_v<Row, Plan>) {
            row.set = present->set;
            row.house = present->house;
        }
        m_edit.put(std::move(row));
        return id;
    }

    template <class Row>
    void removeOwn(Id<Row> id) {
        m_gone.insert(id.value());
        if constexpr (!std::is_same_v<Row, Plan>)
            removeWithMeasures(m_edit, id);
        m_ties.loosen(id, true);
    }

    /// What stood in a room or on a level that has gone stands in none.
    template <class Row>
    void letGo() {
        for (const auto& [id, present] : m_book.sheet(m_house.work).of<Row>()) {
            const Row* left = m_edit.find(id);
            if (!left)
                continue;
            Row row = *left;
            const auto clear = [&](auto& reference) {
                if (m_gone.contains(reference.value()))
                    reference = {};
            };
            if constexpr (requires { row.level; })
                clear(row.level);
            if constexpr (requires { row.room; })
                clear(row.room);
            if constexpr (requires { row.otherRoom; })
                clear(row.otherRoom);
            if (row != *left)
                m_edit.put(std::move(row));
        }
    }

    const Book& m_book;
    IdSource& m_ids;
    const House& m_house;
    PlanTies m_ties;
    EditBuilder m_edit;
    std::set<std::int64_t> m_gone;
    const std::vector<PlanRevision>* m_taken = nullptr;
    const std::vector<PlanRevision>* m_kept = nullptr;
};

const House* comparable(const Book& book, Id<House> id) {
    const House* house = book.house(id);
    const bool open = house && book.plan(house->plan) && book.isOpen(house->plan)
        && book.isOpen(house->work);
    return open ? house : nullptr;
}

} // namespace

std::string sentenceOf(const PlanRevision& revision) {
    switch (revision.kind) {
    case PlanRevision::Kind::added:
        return revision.what + " is new in the plan";
    case PlanRevision::Kind::removed:
        return revision.what + " is no longer in the plan";
    case PlanRevision::Kind::changed:
        break;
    }
    std::string sentence = revision.what + ": ";
    for (const PlanRevision::Difference& each : revision.differences) {
        if (&each != &revision.differences.front())
            sentence += "; ";
        sentence += each.house == each.plan
            ? each.field + " is another"
            : each.field + " " + each.house + " in the house, " + each.plan + " in the plan";
    }
    return sentence;
}

std::vector<PlanRevision> revisionsFor(const Book& book, Id<House> id) {
    const House* house = comparable(book, id);
    return house ? Comparison(book, *house).revisions() : std::vector<PlanRevision>();
}

Edit revisionEdit(const Book& book, IdSource& ids, Id<House> id,
    const std::vector<PlanRevision>& taken, const std::vector<PlanRevision>& kept) {
    const House* house = comparable(book, id);
    if (!house || (taken.empty() && kept.empty()))
        return {"Take over the revised plan", {}};
    return Reviser(book, ids, *house).edit(taken, kept);
}

} // namespace miterbook
