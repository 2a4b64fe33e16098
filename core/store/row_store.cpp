// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/row_store.h"

#include "job/edit.h"
#include "store/row_cells.h"

namespace miterbook {

namespace {

/// What is said of a cell that holds no such value.
Error damagedCell(const TableShape& shape, const Cells& cells, std::size_t column) {
    constexpr std::size_t longest = 60;
    const QVariant& cell = cells[column];
    const std::string found = cell.isNull() ? "nothing" : cellText(cell).substr(0, longest);
    return {Fault::storage, "The book file is damaged or from a newer program: the "
            + std::string(shape.columns[column]) + " of " + std::string(shape.noun) + " "
            + cellText(cells.front()) + " is \"" + found + "\"."};
}

} // namespace

template <class Row>
RowStore<Row>::RowStore(Connection& connection)
    : m_store(connection, shapeOf<Row>()) {}

template <class Row>
Result<Table<Row>> RowStore<Row>::select(
    const std::string& sql, const Cells& keys) {
    Table<Row> rows;
    const auto read = m_store.select(sql, keys, [&](const Cells& cells) -> Result<void> {
        Row row;
        const std::size_t sound = readCells(cells, row);
        if (sound != cells.size())
            return damagedCell(shapeOf<Row>(), cells, sound);
        rows.put(std::move(row));
        return {};
    });
    if (!read)
        return read.error();
    return rows;
}

template <class Row>
Result<Table<Row>> RowStore<Row>::all() {
    return select(shapeOf<Row>().sql.selectAll, {});
}

template <class Row>
Result<Table<Row>> RowStore<Row>::ofPlan(Id<Plan> plan) {
    return select(shapeOf<Row>().sql.selectOfPlan, {numberCell(plan.value())});
}

template <class Row>
Result<Table<Row>> RowStore<Row>::where(const std::string& condition, const Cells& keys) {
    return select(
        shapeOf<Row>().sql.select + " WHERE " + condition + " ORDER BY \"id\"", keys);
}

template <class Row>
Result<std::optional<Row>> RowStore<Row>::find(Id<Row> id) {
    auto rows = select(shapeOf<Row>().sql.selectOne, {numberCell(id.value())});
    if (!rows)
        return rows.error();
    const Row* row = rows->find(id);
    return row ? std::optional<Row>(*row) : std::nullopt;
}

template <class Row>
Result<void> RowStore<Row>::insert(const Row& row) {
    return m_store.insert(toCells(row));
}

template <class Row>
Result<void> RowStore<Row>::update(const Row& before, const Row& after) {
    if (auto held = checkHeld(before); !held)
        return held;
    return m_store.update(toCells(after), before.id.value());
}

template <class Row>
Result<void> RowStore<Row>::remove(const Row& before) {
    if (auto held = checkHeld(before); !held)
        return held;
    return m_store.remove(before.id.value());
}

template <class Row>
Result<void> RowStore<Row>::checkHeld(const Row& before) {
    const auto held = find(before.id);
    if (!held)
        return held.error();
    if (*held != before)
        return changedMeanwhile(Describe<Row>::noun);
    return {};
}

// One line for each kind of AnyRow; a kind left out does not link.
template class RowStore<Shop>;
template class RowStore<Practice>;
template class RowStore<Terms>;
template class RowStore<Builder>;
template class RowStore<Profile>;
template class RowStore<Stick>;
template class RowStore<StickPrice>;
template class RowStore<Offcut>;
template class RowStore<Part>;
template class RowStore<Consumable>;
template class RowStore<LabourRate>;
template class RowStore<Factor>;
template class RowStore<PiecePrice>;
template class RowStore<CrewMember>;
template class RowStore<Burden>;
template class RowStore<HeaderName>;
template class RowStore<PlanSet>;
template class RowStore<Plan>;
template class RowStore<House>;
template class RowStore<BidSetup>;
template class RowStore<Scenario>;
template class RowStore<Variant>;
template class RowStore<Swap>;
template class RowStore<Level>;
template class RowStore<Room>;
template class RowStore<Opening>;
template class RowStore<Closet>;
template class RowStore<Stair>;
template class RowStore<WallTreatment>;
template class RowStore<OtherWork>;
template class RowStore<SheetFile>;
template class RowStore<Underlay>;
template class RowStore<Dismissal>;
template class RowStore<Bench>;
template class RowStore<Measure>;
template class RowStore<CutPiece>;
template class RowStore<SawTest>;
template class RowStore<RackMove>;
template class RowStore<TimeEntry>;
template class RowStore<Timer>;
template class RowStore<WeekApproval>;
template class RowStore<PayTerms>;
template class RowStore<CrewPay>;
template class RowStore<PieceRate>;
template class RowStore<SoldWork>;
template class RowStore<SoldTask>;
template class RowStore<BillingSetup>;
template class RowStore<BillingTerms>;
template class RowStore<Contract>;
template class RowStore<Extra>;
template class RowStore<Backcharge>;
template class RowStore<IssuedPaper>;
template class RowStore<SentBid>;
template class RowStore<Invoice>;
template class RowStore<InvoiceVoid>;
template class RowStore<Payment>;
template class RowStore<Allocation>;
template class RowStore<Reminder>;
template class RowStore<HouseDate>;
template class RowStore<ExtraLine>;
template class RowStore<InvoiceLine>;
template class RowStore<Attachment>;

} // namespace miterbook
