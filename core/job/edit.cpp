// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"

#include <cassert>

namespace miterbook {

namespace {

/// The table a row lives in; makes the plan's entry when it is the plan's first row in memory.
template <class Row>
Table<Row>& tableOf(Book& book, const Row& row) {
    if constexpr (PriceTables::holds<Row>)
        return book.prices.template of<Row>();
    else if constexpr (JobTables::holds<Row>)
        return book.jobs.template of<Row>();
    else
        return book.sheets[row.plan].template of<Row>();
}

template <class Row>
void put(Book& book, const Row& row, const Change& change) {
    auto& table = tableOf(book, row);
    if (change.after)
        table.put(row);
    else
        table.erase(row.id);
}

/// Sums follow the entries.
void put(Book& book, const TimeEntry&, const Change& change) {
    const auto side = [](const std::optional<AnyRow>& row) {
        return row ? std::get_if<TimeEntry>(&*row) : nullptr;
    };
    book.time.change(side(change.before), side(change.after));
}

template <class Row>
const Row* present(const Book& book, const Row& row) {
    if constexpr (belowPlan<Row>)
        return book.sheet(row.plan).template of<Row>().find(row.id);
    else
        return findRow(book, row.id);
}

Result<void> checkChange(const Book& book, const Change& change, const std::string& sentence) {
    assert(change.before || change.after);
    return std::visit(
        [&](const auto& row) -> Result<void> {
            using Row = std::remove_cvref_t<decltype(row)>;
            const Row* held = present(book, row);
            const Row* wanted = change.before ? std::get_if<Row>(&*change.before) : nullptr;
            const bool agrees = held && wanted ? *held == *wanted : !held && !wanted;
            if (agrees)
                return {};
            return Error{Fault::conflict,
                "\"" + sentence + "\" was not done: the " + std::string(Describe<Row>::noun)
                    + " has been changed in the meantime."};
        },
        change.row());
}

} // namespace

Change::Change() = default;
Change::Change(std::optional<AnyRow> from, std::optional<AnyRow> to)
    : before(std::move(from))
    , after(std::move(to)) {
}
Change::Change(const Change&) = default;
Change::Change(Change&&) noexcept = default;
Change& Change::operator=(const Change&) = default;
Change& Change::operator=(Change&&) noexcept = default;
Change::~Change() = default;
bool Change::operator==(const Change&) const = default;

Edit inverse(const Edit& edit) {
    Edit back{edit.sentence, {}};
    back.changes.reserve(edit.changes.size());
    for (auto it = edit.changes.rbegin(); it != edit.changes.rend(); ++it)
        back.changes.push_back({it->after, it->before});
    return back;
}

Result<void> check(const Book& book, const Edit& edit) {
    for (const Change& change : edit.changes) {
        if (auto checked = checkChange(book, change, edit.sentence); !checked)
            return checked;
    }
    return {};
}

/// A new plan is open from the start; one that is gone takes its sheet along, unless rows are left
/// on it, which the edit's inverse will need.
static void openAndCloseSheets(Book& book, const Edit& edit) {
    for (const Change& change : edit.changes) {
        const Plan* plan = std::get_if<Plan>(&change.row());
        if (!plan)
            continue;
        if (change.after && !change.before)
            book.sheets.try_emplace(plan->id);
        else if (!change.after && book.sheet(plan->id) == SheetRows())
            book.sheets.erase(plan->id);
    }
}

void apply(Book& book, const Edit& edit) {
    for (const Change& change : edit.changes) {
        std::visit([&](const auto& row) { put(book, row, change); }, change.row());
    }
    openAndCloseSheets(book, edit);
}

} // namespace miterbook
