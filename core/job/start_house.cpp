// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/start_house.h"

#include "basics/blank.h"
#include "job/plan_stamp.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

/// Copies the rows of one whole plan under another, giving each a new id and a tie to where it
/// comes from. Levels go first, then rooms, so that what stands in them finds its new level and
/// room. The files of sheets are not copied: the house looks at the plan's.
class PlanCopy {
public:
    PlanCopy(EditBuilder& edit, IdSource& ids, Id<Plan> plan)
        : m_edit(edit)
        , m_ids(ids)
        , m_plan(plan) {}

    template <Overlaid Row>
    void copy(const std::vector<Row>& rows) {
        for (Row row : rows) {
            const Id<Row> old = row.id;
            const std::int64_t stamp = stampOf(row);
            row.id = m_ids.next<Row>();
            tie<Row>(row.id.value(), old.value(), stamp);
            row.plan = m_plan;
            row.variant = {};
            row.replaces = {};
            moveReferences(row);
            remember(old, row.id);
            m_edit.put(std::move(row));
        }
    }

    template <class Row>
    void tie(std::int64_t own, std::int64_t source, std::int64_t stamp) {
        m_edit.put(PlanTie{
            m_ids.next<PlanTie>(), m_plan, std::string(Describe<Row>::table), own, source, stamp});
    }

    /// Rows that no variant changes.
    template <class Row>
    void copyPlain(const Table<Row>& rows) {
        for (const auto& [id, each] : rows) {
            Row row = each;
            row.id = m_ids.next<Row>();
            row.plan = m_plan;
            if constexpr (requires { row.level; }) {
                row.level = found(m_levels, row.level);
                if (!row.level)
                    continue;
            }
            m_edit.put(std::move(row));
        }
    }

private:
    void remember(Id<Level> old, Id<Level> made) { m_levels[old] = made; }
    void remember(Id<Room> old, Id<Room> made) { m_rooms[old] = made; }
    template <class Row>
    void remember(Id<Row>, Id<Row>) {}

    template <class Row>
    void moveReferences(Row& row) const {
        if constexpr (requires { row.level; })
            row.level = found(m_levels, row.level);
        if constexpr (requires { row.room; })
            row.room = found(m_rooms, row.room);
        if constexpr (requires { row.otherRoom; })
            row.otherRoom = found(m_rooms, row.otherRoom);
    }

    /// None for a level or room that the selection takes away.
    template <class Row>
    static Id<Row> found(const std::map<Id<Row>, Id<Row>>& made, Id<Row> old) {
        const auto it = made.find(old);
        return it == made.end() ? Id<Row>() : it->second;
    }

    EditBuilder& m_edit;
    IdSource& m_ids;
    Id<Plan> m_plan;
    std::map<Id<Level>, Id<Level>> m_levels;
    std::map<Id<Room>, Id<Room>> m_rooms;
};

Result<void> checkVariant(const PlanRows& rows, Id<Variant> id, VariantKind kind) {
    const Variant* variant = rows.of<Variant>().find(id);
    if (variant && variant->kind == kind)
        return {};
    return Error{Fault::notFound, "The plan has no such " + std::string(word(kind)) + "."};
}

Result<void> checkSelection(const PlanRows& rows, const Selection& selection) {
    if (selection.elevation) {
        if (auto ok = checkVariant(rows, selection.elevation, VariantKind::elevation); !ok)
            return ok;
    }
    for (const Id<Variant> option : selection.options) {
        if (auto ok = checkVariant(rows, option, VariantKind::option); !ok)
            return ok;
    }
    return {};
}

Result<void> checkStart(const Book& book, const HouseStart& start, const std::string& name) {
    if (name.empty())
        return badInput("A house needs a name, such as its lot.");
    const auto& houses = book.jobs.of<House>();
    if (std::ranges::any_of(houses, [&](const auto& entry) { return entry.second.name == name; }))
        return badInput("There is a house called \"" + name + "\" already.");
    const Plan* plan = book.plan(start.plan);
    if (!plan)
        return Error{Fault::notFound, "That plan is not in the book any more."};
    if (plan->house)
        return badInput("A house is started from a builder's plan, not from another house.");
    if (!book.isOpen(start.plan))
        return badInput("The plan \"" + plan->name + "\" has to be opened first.");
    return checkSelection(book.sheet(start.plan), start.selection);
}

House houseFrom(const HouseStart& start, Id<House> id, Id<Plan> work, std::string name) {
    House house;
    house.id = id;
    house.plan = start.plan;
    house.work = work;
    house.name = std::move(name);
    house.lot = start.lot;
    house.address = start.address;
    house.elevation = start.selection.elevation;
    house.options = start.selection.options;
    house.started = start.started;
    return house;
}

/// The plan and everything below it.
void removeWholePlan(EditBuilder& edit, const Book& book, Id<Plan> plan) {
    book.sheet(plan).forEach([&](const auto& table) {
        for (const auto& [id, row] : table)
            edit.remove(id);
    });
    forEachOfPlan(book, plan, [&](const auto& row) { edit.remove(row.id); });
    edit.remove(plan);
}

std::string nameOf(const Book& book, Id<Plan> id) {
    const Plan* plan = book.plan(id);
    return plan ? plan->name : std::string();
}

} // namespace

Result<Edit> startHouse(const Book& book, IdSource& ids, const HouseStart& start) {
    const std::string name(trimmed(start.name));
    if (auto ok = checkStart(book, start, name); !ok)
        return ok.error();
    const WholePlan whole = wholePlan(
        *book.plan(start.plan), book.sheet(start.plan), start.selection);

    EditBuilder edit(book, "Start house " + name);
    const Id<House> house = ids.next<House>();
    Plan work = whole.plan;
    work.id = ids.next<Plan>();
    work.house = house;
    edit.put(houseFrom(start, house, work.id, name));
    edit.put(work);
    forEachOfPlan(book, start.plan, [&]<class Row>(Row own) {
        own.id = ids.next<Row>();
        own.plan = work.id;
        edit.put(std::move(own));
    });
    PlanCopy copy(edit, ids, work.id);
    copy.tie<Plan>(work.id.value(), start.plan.value(), stampOf(whole.plan));
    copy.copy(whole.levels);
    copy.copy(whole.rooms);
    copy.copy(whole.openings);
    copy.copy(whole.closets);
    copy.copy(whole.stairs);
    copy.copy(whole.treatments);
    copy.copy(whole.others);
    const SheetRows& rows = book.sheet(start.plan);
    copy.copyPlain(rows.of<Underlay>());
    copy.copyPlain(rows.of<Dismissal>());
    return edit.take();
}

Edit removePlan(const Book& book, Id<Plan> plan) {
    EditBuilder edit(book, "Remove plan " + nameOf(book, plan));
    removeWholePlan(edit, book, plan);
    return edit.take();
}

Edit removeHouse(const Book& book, Id<House> id) {
    const House* house = book.house(id);
    EditBuilder edit(book, "Remove house " + (house ? house->name : std::string()));
    if (house) {
        edit.remove(id);
        forEachOfHouse(book, id, [&](const auto& row) { edit.remove(row.id); });
        removeWholePlan(edit, book, house->work);
    }
    return edit.take();
}

} // namespace miterbook
