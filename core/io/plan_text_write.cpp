// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/steady_order.h"
#include "io/exchange_row.h"
#include "io/json_text.h"
#include "io/plan_text.h"
#include "io/plan_text_rules.h"

#include <algorithm>
#include <cassert>

namespace miterbook {

namespace {

/// A variant's rows of one kind, or the plan's own for no variant, in position order.
template <Overlaid Row>
std::vector<const Row*> layerOf(const PlanRows& rows, Id<Variant> variant) {
    std::vector<const Row*> layer;
    for (const auto& [id, row] : rows.of<Row>()) {
        if (row.variant == variant)
            layer.push_back(&row);
    }
    sortByPosition(layer);
    return layer;
}

class Writer {
public:
    Writer(const Book& book, const Plan& plan)
        : m_book(book)
        , m_plan(plan)
        , m_rows(book.sheet(plan.id)) {
        sortVariants(VariantKind::elevation);
        sortVariants(VariantKind::option);
        noteProfiles();
        forEachListedKind([&](auto kind) { noteRows<typename decltype(kind)::Row>(); });
        for (const auto& [id, file] : files())
            m_refs.of<SheetFile>().add(id.value(), {file.name});
    }

    std::string text() const {
        Json json = Json::object();
        json["miterbook"] = planTextKind;
        json["version"] = planTextVersion;
        writeOwner(json);
        json["plan"] = writeValue(m_plan, m_refs);
        writeLists(json, {});
        writePlain(json, listKey<SheetFile>, files());
        writePlain(json, listKey<Underlay>, m_rows.of<Underlay>());
        writePlain(json, listKey<Dismissal>, m_rows.of<Dismissal>());
        writeVariants(json, VariantKind::elevation);
        writeVariants(json, VariantKind::option);
        if (!m_profiles.empty()) // last: who reads the file looks for the plan
            json["profiles"] = profiles();
        return layOutJson(json);
    }

private:
    void sortVariants(VariantKind kind) {
        for (const auto& [id, variant] : m_rows.of<Variant>()) {
            if (variant.kind == kind)
                m_variants.push_back(&variant);
        }
    }

    template <class Row>
    void noteProfilesOf(const Row& row) {
        forEachField<Row>([&](const auto& field) {
            using Member = std::remove_cvref_t<decltype(row.*field.member)>;
            if constexpr (std::is_same_v<Member, Id<Profile>>) {
                if (const Profile* profile = m_book.prices.profile(row.*field.member))
                    m_profiles.insert_or_assign(profile->id, profile);
            }
        });
    }

    void noteProfiles() {
        noteProfilesOf(m_plan);
        m_rows.forEach([&](const auto& table) {
            for (const auto& [id, row] : table)
                noteProfilesOf(row);
        });
        for (const auto& [id, profile] : m_profiles)
            m_refs.of<Profile>().add(id.value(), {profile->name});
    }

    template <class Row>
    void noteRows() {
        noteLayer<Row>({});
        for (const Variant* variant : m_variants)
            noteLayer<Row>(variant->id);
    }

    template <class Row>
    void noteLayer(Id<Variant> variant) {
        for (const Row* row : layerOf<Row>(m_rows, variant))
            m_refs.of<Row>().add(row->id.value(), refNames(*row));
    }

    /// A house's copy belongs to no plan set itself: its builder's plan does.
    const PlanSet* planSet() const {
        const House* house = m_book.house(m_plan.house);
        const Plan* plan = house ? m_book.plan(house->plan) : nullptr;
        return m_book.jobs.of<PlanSet>().find(plan && !m_plan.set ? plan->set : m_plan.set);
    }

    void writeOwner(Json& json) const {
        const PlanSet* set = planSet();
        if (!set)
            return;
        if (const Builder* builder = m_book.prices.of<Builder>().find(set->builder))
            json["builder"] = writeValue(*builder, m_refs);
        json["plan_set"] = writeValue(*set, m_refs);
    }

    Json profiles() const {
        Json list = Json::array();
        for (const auto& [id, profile] : m_profiles) {
            Json object = writeValue(*profile, m_refs);
            for (const Stick& stick : m_book.prices.sticksOf(id))
                object["sticks"].push_back(writeValue(stick, m_refs));
            list.push_back(std::move(object));
        }
        return list;
    }

    void writeLists(Json& json, Id<Variant> variant) const {
        forEachListedKind([&](auto kind) {
            using Row = typename decltype(kind)::Row;
            const Json list = rowList<Row>(variant);
            if (!list.empty())
                json[std::string(listKey<Row>)] = list;
        });
    }

    /// The plan's files, and those of the builder's plan that a house looks at.
    Table<SheetFile> files() const {
        Table<SheetFile> files = m_rows.of<SheetFile>();
        for (const auto& [id, underlay] : m_rows.of<Underlay>()) {
            if (const SheetFile* file = findRow(m_book, underlay.file))
                files.put(*file);
        }
        return files;
    }

    template <class Row>
    void writePlain(Json& json, std::string_view key, const Table<Row>& rows) const {
        Json list = Json::array();
        for (const auto& [id, row] : rows)
            list.push_back(writeValue(row, m_refs));
        if (!list.empty())
            json[std::string(key)] = std::move(list);
    }

    template <class Row>
    Json rowList(Id<Variant> variant) const {
        Json list = Json::array();
        PositionRule<Row> rule(m_rows.of<Row>(), variant);
        for (const Row* row : layerOf<Row>(m_rows, variant))
            list.push_back(rowObject(*row, rule));
        return list;
    }

    /// The fields in which a row differs from the one it changes, or else from an empty one.
    template <class Row>
    Json rowObject(const Row& row, PositionRule<Row>& rule) const {
        Json object = Json::object();
        Row start;
        if (row.replaces) {
            object[row.removed ? "removes" : "changes"] = m_refs.textOf(row.replaces);
            start = changedRow(m_rows.of<Row>(), row.replaces);
        } else if (row.removed) {
            object["removed"] = true;
        }
        writeFields(row, start, m_refs, object);
        if (row.position != rule.usual(row.replaces ? std::optional(start.position) : std::nullopt))
            object["position"] = row.position;
        rule.note(row);
        return object;
    }

    void writeVariants(Json& json, VariantKind kind) const {
        Json list = Json::array();
        for (const Variant* variant : m_variants) {
            if (variant->kind == kind)
                list.push_back(variantObject(*variant));
        }
        if (!list.empty())
            json[kind == VariantKind::elevation ? "elevations" : "options"] = list;
    }

    Json variantObject(const Variant& variant) const {
        Json object = writeValue(variant, m_refs);
        for (const auto& [id, swap] : m_rows.of<Swap>()) {
            if (swap.variant == variant.id)
                object["swaps"].push_back(writeValue(swap, m_refs));
        }
        writeLists(object, variant.id);
        return object;
    }

    const Book& m_book;
    const Plan& m_plan;
    const PlanRows& m_rows;
    std::vector<const Variant*> m_variants; ///< elevations, then options
    std::map<Id<Profile>, const Profile*> m_profiles;
    PlanRefs m_refs;
};

} // namespace

std::string writePlanText(const Book& book, Id<Plan> plan) {
    const Plan* found = book.plan(plan);
    assert(found && book.isOpen(plan));
    return Writer(book, *found).text();
}

} // namespace miterbook
