// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/journal_states.h"

#include "job/edit_json.h"
#include "store/cell.h"
#include "store/safety/tolerant_scan.h"

#include <algorithm>

namespace miterbook {

namespace {

void takeChange(JournalStates& states, std::int64_t seq, Change&& change) {
    const AnyRow& row = change.row();
    LastState& state = states.rows[{std::string(row.table()), row.id()}];
    if (state.seq > seq)
        return;
    state.seq = seq;
    state.row = std::move(change.after);
}

void takeEntry(JournalStates& states, const Cells& cells) {
    const std::int64_t seq = cellNumber(cells[0]).value_or(0);
    states.last = std::max(states.last, seq);
    auto changes = changesFromText(cellText(cells[1]));
    if (!changes) {
        states.unreadable.push_back(seq);
        return;
    }
    ++states.entries;
    for (Change& change : *changes)
        takeChange(states, seq, std::move(change));
}

} // namespace

Result<JournalStates> journalStates(Connection& connection) {
    JournalStates states;
    const auto scanned = scanAround(connection, "journal", {"seq", "changes"},
        [&](const Cells& cells) { takeEntry(states, cells); });
    if (!scanned)
        return scanned.error();
    std::ranges::sort(states.unreadable);
    return states;
}

} // namespace miterbook
