// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/quote.h"
#include "basics/steady_order.h"
#include "plan/plan_rows.h"

#include <algorithm>
#include <string>
#include <unordered_map>
#include <vector>

namespace miterbook {

/// What the user calls a row: its noun and mark or name, "opening W4".
template <Overlaid Row>
std::string spokenName(const Row& row) {
    std::string text(Describe<Row>::noun);
    std::string_view name;
    if constexpr (std::is_same_v<Row, Opening>)
        name = row.mark;
    else
        name = row.name;
    return name.empty() ? text + " without a name" : text + " " + std::string(name);
}

/// One kind of row with the differences of the chosen variants taken in, in the order chosen.
template <Overlaid Row>
class Overlay {
public:
    Overlay(const Table<Row>& table, const std::vector<const Variant*>& chosen,
        std::vector<std::string>& remarks)
        : m_remarks(remarks) {
        for (const auto& [id, row] : table) {
            if (!row.variant && !row.removed)
                add(row, nullptr);
        }
        for (const Variant* variant : chosen) {
            for (const auto& [id, row] : table) {
                if (row.variant == variant->id)
                    layOver(row, *variant);
            }
        }
    }

    /// The id under which a row is found in the whole plan; none when it is not there.
    Id<Row> kept(Id<Row> id) const {
        const auto it = m_slotOf.find(id);
        if (it == m_slotOf.end() || m_slots[it->second].removed)
            return {};
        return m_slots[it->second].row.id;
    }

    /// The rows that are there, in position order, ties in the order they were made.
    std::vector<Row> rows() const {
        std::vector<Row> rows;
        rows.reserve(m_slots.size());
        for (const Slot& slot : m_slots) {
            if (!slot.removed)
                rows.push_back(slot.row);
        }
        sortByPosition(rows);
        return rows;
    }

private:
    struct Slot {
        Row row;
        const Variant* by = nullptr; ///< the variant that spoke last; none for the base plan
        bool removed = false;
    };

    void add(const Row& row, const Variant* by) {
        m_slotOf[row.id] = m_slots.size();
        m_slots.push_back({row, by, false});
        plain(m_slots.back().row);
    }

    /// The whole plan knows no variants: what is in it is what is built.
    static void plain(Row& row) {
        row.variant = {};
        row.replaces = {};
        row.removed = false;
    }

    void layOver(const Row& row, const Variant& variant) {
        if (!row.replaces) {
            if (!row.removed)
                add(row, &variant);
            return;
        }
        const auto it = m_slotOf.find(row.replaces);
        if (it == m_slotOf.end()) {
            m_remarks.push_back(capitalised(word(variant.kind)) + " " + variant.name + " changes "
                + spokenName(row) + ", which is not in the plan without another option.");
            return;
        }
        const std::size_t at = it->second;
        change(m_slots[at], row, variant);
        m_slotOf[row.id] = at;
    }

    void change(Slot& slot, const Row& row, const Variant& variant) {
        const bool bothRemove = slot.removed && row.removed;
        if (slot.by && slot.by != &variant && !bothRemove)
            m_remarks.push_back(capitalised(word(slot.by->kind)) + " " + slot.by->name + " and "
                + std::string(word(variant.kind)) + " " + variant.name + " both change "
                + spokenName(slot.row) + "; " + variant.name + " is used.");
        slot.by = &variant;
        slot.removed = row.removed;
        if (row.removed)
            return;
        const Id<Row> id = slot.row.id;
        slot.row = row;
        slot.row.id = id;
        plain(slot.row);
    }

    std::vector<std::string>& m_remarks;
    std::vector<Slot> m_slots;
    std::unordered_map<Id<Row>, std::size_t> m_slotOf;
};

} // namespace miterbook
