// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/exchange_row.h"
#include "io/plan_text_rules.h"
#include "io/plan_text_source.h"
#include "plan/plan_checks.h"

#include <map>

namespace miterbook {

/// A plan's own lists, or those of one elevation or option.
struct TextLayer {
    TextEntry entry;
    Id<Variant> variant; ///< none: the plan's own
};

// A plan may be passed on while it is still being typed, so sizes may be missing.
inline Result<void> checkListed(const Level& row) {
    return checkLevel(row, Missing::allowed);
}
inline Result<void> checkListed(const Room& row) {
    return checkRoom(row, Missing::allowed);
}
inline Result<void> checkListed(const Opening& row) {
    return checkOpening(row, Missing::allowed);
}
inline Result<void> checkListed(const Closet& row) {
    return checkCloset(row, Missing::allowed);
}
inline Result<void> checkListed(const Stair& row) {
    return checkStair(row, Missing::allowed);
}
inline Result<void> checkListed(const WallTreatment& row) {
    return checkTreatment(row, Missing::allowed);
}
inline Result<void> checkListed(const OtherWork& row) {
    return checkOtherWork(row);
}

inline Result<void> checkListed(const SheetFile& row) {
    return checkSheetFile(row);
}
inline Result<void> checkListed(const Underlay& row) {
    return checkUnderlay(row);
}
inline Result<void> checkListed(const Dismissal& row) {
    return checkDismissal(row);
}

/// The rows of one kind in an exchange text, of all its layers.
template <Overlaid Row>
class TextRows {
public:
    /// Gives every row its id and its name, so that rows may refer to each other in any order.
    Result<void> collect(const std::vector<TextLayer>& layers, IdSource& ids, PlanRefs& refs) {
        for (const TextLayer& layer : layers) {
            auto entries = entriesIn(layer.entry, listKey<Row>);
            if (!entries)
                return entries.error();
            for (TextEntry& entry : *entries) {
                const Id<Row> id = ids.next<Row>();
                refs.of<Row>().add(id.value(), namesIn(entry));
                m_slots.push_back({std::move(entry), id, layer.variant});
            }
        }
        return {};
    }

    /// Reads all rows: first those that change none, then those that start from them.
    Result<void> read(Id<Plan> plan, const PlanRefs& refs) {
        for (const bool changes : {false, true}) {
            std::map<Id<Variant>, PositionRule<Row>> rules;
            for (const Slot& slot : m_slots) {
                if (slot.changes() != changes)
                    continue;
                auto& rule = rules.try_emplace(slot.variant, m_table, slot.variant).first->second;
                if (auto read = readSlot(slot, plan, refs, rule); !read)
                    return slot.entry.error(read.error());
            }
        }
        return {};
    }

    /// The rows in the order of the file.
    std::vector<Row> rows() const {
        std::vector<Row> rows;
        for (const auto& [id, row] : m_table)
            rows.push_back(row);
        return rows;
    }

private:
    struct Slot {
        TextEntry entry;
        Id<Row> id;
        Id<Variant> variant;
        bool changes() const { return entry.has("changes") || entry.has("removes"); }
    };

    static std::vector<std::string> namesIn(const TextEntry& entry) {
        Row row;
        if (entry.has("changes") || entry.has("removes"))
            return {};
        if constexpr (requires { row.mark; })
            row.mark = entry.text("mark");
        if constexpr (requires { row.name; })
            row.name = entry.text("name");
        return refNames(row);
    }

    Result<Row> startOf(const Slot& slot, Id<Plan> plan, const PlanRefs& refs) const {
        Row start;
        Id<Row> replaced;
        if (slot.changes()) {
            const char* key = slot.entry.has("changes") ? "changes" : "removes";
            const auto id = ExchangeForm<Id<Row>>::read(slot.entry.json->at(key), refs);
            if (!id)
                return Error{id.error().fault, std::string(key) + ": " + id.error().sentence};
            replaced = *id;
            start = changedRow(m_table, replaced);
        }
        start.id = slot.id;
        start.plan = plan;
        start.variant = slot.variant;
        start.replaces = replaced;
        start.removed = slot.entry.has("removes");
        return start;
    }

    Result<void> readSlot(
        const Slot& slot, Id<Plan> plan, const PlanRefs& refs, PositionRule<Row>& rule) {
        const auto start = startOf(slot, plan, refs);
        if (!start)
            return start.error();
        auto row = readRow(
            *slot.entry.json, *start, refs, {"changes", "removes", "removed", "position"});
        if (!row)
            return row.error();
        if (auto read = readOwnKeys(slot, refs, rule, *row); !read)
            return read;
        if (auto checked = checkListed(*row); !checked && !row->removed)
            return checked;
        rule.note(*row);
        m_table.put(std::move(row).value());
        return {};
    }

    /// The keys that no field stands for: removed, position.
    Result<void> readOwnKeys(
        const Slot& slot, const PlanRefs& refs, const PositionRule<Row>& rule, Row& row) const {
        if (slot.entry.has("removed")) {
            const auto removed = ExchangeForm<bool>::read(slot.entry.json->at("removed"), refs);
            if (!removed)
                return badInput("removed: " + removed.error().sentence);
            row.removed = *removed;
        }
        if (!slot.entry.has("position")) {
            row.position = rule.usual(row.replaces ? std::optional(row.position) : std::nullopt);
            return {};
        }
        const auto position = ExchangeForm<int>::read(slot.entry.json->at("position"), refs);
        if (!position)
            return badInput("position: " + position.error().sentence);
        row.position = *position;
        return {};
    }

    std::vector<Slot> m_slots;
    Table<Row> m_table;
};

} // namespace miterbook
