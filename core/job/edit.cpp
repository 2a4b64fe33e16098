// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"

#include "job/book_rows.h"

#include <cassert>

namespace miterbook {

namespace {

void put(RowMap& rows, const Change& change) {
    if (change.after)
        rows.put(change.after->id(), change.after->shared());
    else
        rows.erase(change.before->id());
}

void put(Book& book, const Change& change) {
    const AnyRow& row = change.row();
    if (row.is<TimeEntry>()) // sums follow the entries
        book.time.change(rowIn<TimeEntry>(change.before), rowIn<TimeEntry>(change.after));
    else if (isBelowPlan(row.kind()))
        put(rowMap(book.sheets[planOf(row)], row.kind()), change);
    else
        put(rowMap(book, row.kind()), change);
}

Result<void> checkChange(const Book& book, const Change& change, const std::string& sentence) {
    assert(change.before || change.after);
    if (findSame(book, change.row()) == change.before)
        return {};
    return Error{Fault::conflict,
        "\"" + sentence + "\" was not done: the " + std::string(change.row().noun())
            + " has been changed in the meantime."};
}

/// A new plan is open from the start; one that is gone takes its sheet along, unless rows are left
/// on it, which the edit's inverse will need.
void openAndCloseSheets(Book& book, const Edit& edit) {
    for (const Change& change : edit.changes) {
        const Plan* plan = change.row().as<Plan>();
        if (!plan)
            continue;
        if (change.after && !change.before)
            book.sheets.try_emplace(plan->id);
        else if (!change.after && book.sheet(plan->id) == SheetRows())
            book.sheets.erase(plan->id);
    }
}

bool isOf(const Change& change, std::size_t kind, std::int64_t id) {
    return change.row().kind() == kind && change.row().id() == id;
}

} // namespace

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

void apply(Book& book, const Edit& edit) {
    for (const Change& change : edit.changes)
        put(book, change);
    openAndCloseSheets(book, edit);
}

std::int64_t highestId(const Edit& edit) {
    std::int64_t highest = 0;
    for (const Change& change : edit.changes)
        highest = std::max(highest, change.row().id());
    return highest;
}

const Change* EditBuilder::changeOf(std::size_t kind, std::int64_t id) const {
    const auto found = std::ranges::find_if(
        m_edit.changes, [&](const Change& change) { return isOf(change, kind, id); });
    return found == m_edit.changes.end() ? nullptr : &*found;
}

EditBuilder& EditBuilder::put(AnyRow row) {
    const auto same = std::ranges::find_if(
        m_edit.changes, [&](const Change& change) { return isOf(change, row.kind(), row.id()); });
    if (same != m_edit.changes.end()) {
        same->after = std::move(row);
        if (same->before == same->after)
            m_edit.changes.erase(same);
        return *this;
    }
    auto before = findAnyRow(m_book, row.kind(), row.id());
    if (before != row)
        m_edit.changes.push_back({std::move(before), std::move(row)});
    return *this;
}

EditBuilder& EditBuilder::remove(std::size_t kind, std::int64_t id) {
    const auto same = std::ranges::find_if(
        m_edit.changes, [&](const Change& change) { return isOf(change, kind, id); });
    if (same != m_edit.changes.end()) {
        same->after.reset();
        if (!same->before)
            m_edit.changes.erase(same);
        return *this;
    }
    if (auto before = findAnyRow(m_book, kind, id))
        m_edit.changes.push_back({std::move(before), std::nullopt});
    return *this;
}

} // namespace miterbook
