// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/any_row.h"
#include "job/row_check.h"

#include <algorithm>
#include <map>
#include <string>
#include <vector>

namespace miterbook {

/// Compares two plans field by field, ids aside: written without any of the exchange text's own
/// code.
class PlanCompare {
public:
    PlanCompare(const Book& a, Id<Plan> planA, const Book& b, Id<Plan> planB)
        : m_a(a)
        , m_b(b)
        , m_planA(planA)
        , m_planB(planB) {}

    /// The first difference; empty when there is none.
    std::string difference() {
        pair<Variant>();
        forEachKind([&](auto kind) { pair<typename decltype(kind)::Row>(); });
        compare(*m_a.plan(m_planA), *m_b.plan(m_planB));
        compareAll<Variant>();
        forEachKind([&](auto kind) { compareAll<typename decltype(kind)::Row>(); });
        return m_difference;
    }

private:
    template <class Fn>
    static void forEachKind(Fn&& fn) {
        fn(RowKind<Swap>());
        fn(RowKind<Level>());
        fn(RowKind<Room>());
        fn(RowKind<Opening>());
        fn(RowKind<Closet>());
        fn(RowKind<Stair>());
        fn(RowKind<WallTreatment>());
        fn(RowKind<OtherWork>());
        fn(RowKind<SheetFile>());
        fn(RowKind<Underlay>());
        fn(RowKind<Dismissal>());
    }

    /// Rows in an order that does not depend on ids between groups: elevations before options; the
    /// plan's own rows before those of variants; then position; then the order they were made.
    template <class Row>
    std::vector<const Row*> ordered(const Book& book, Id<Plan> plan) const {
        std::vector<const Row*> rows;
        for (const auto& [id, row] : book.sheet(plan).template of<Row>())
            rows.push_back(&row);
        std::ranges::stable_sort(rows, {}, [&](const Row* row) {
            if constexpr (std::is_same_v<Row, Variant>) {
                return std::pair(row->kind == VariantKind::option ? 1L : 0L, 0);
            } else if constexpr (!requires { row->variant; }) {
                return std::pair(0L, 0);
            } else {
                const auto variants = orderedVariants(book, plan);
                const auto at = std::ranges::find(variants, row->variant) - variants.begin();
                const long layer = row->variant ? at + 1 : 0;
                if constexpr (requires { row->position; })
                    return std::pair(layer, row->position);
                else
                    return std::pair(layer, 0);
            }
        });
        return rows;
    }

    std::vector<Id<Variant>> orderedVariants(const Book& book, Id<Plan> plan) const {
        std::vector<Id<Variant>> ids;
        for (const Variant* variant : ordered<Variant>(book, plan))
            ids.push_back(variant->id);
        return ids;
    }

    template <class Row>
    void pair() {
        const auto a = ordered<Row>(m_a, m_planA);
        const auto b = ordered<Row>(m_b, m_planB);
        if (a.size() != b.size())
            return say("another number of " + std::string(Describe<Row>::table));
        for (std::size_t i = 0; i < a.size(); ++i)
            m_same[std::pair(Describe<Row>::table, a[i]->id.value())] = b[i]->id.value();
    }

    template <class Row>
    void compareAll() {
        const auto a = ordered<Row>(m_a, m_planA);
        const auto b = ordered<Row>(m_b, m_planB);
        for (std::size_t i = 0; i < std::min(a.size(), b.size()); ++i)
            compare(*a[i], *b[i]);
    }

    template <class Row>
    void compare(const Row& a, const Row& b) {
        forEachField<Row>([&](const auto& field) {
            if (field.name != "id" && field.name != "plan"
                && !same(a.*field.member, b.*field.member))
                say(std::string(Describe<Row>::table) + " " + std::string(field.name));
        });
    }

    template <class T>
    bool same(const T& a, const T& b) const {
        return a == b;
    }
    template <class Row>
    bool same(Id<Row> a, Id<Row> b) const {
        if (!a || !b)
            return !a && !b;
        if constexpr (std::is_same_v<Row, Profile>)
            return m_a.prices.profileName(a) == m_b.prices.profileName(b);
        else if constexpr (PlanRows::holds<Row>)
            return m_same.at(std::pair(Describe<Row>::table, a.value())) == b.value();
        else
            return m_a.jobs.of<PlanSet>().find(Id<PlanSet>(a.value()))->name
                == m_b.jobs.of<PlanSet>().find(Id<PlanSet>(b.value()))->name;
    }

    void say(const std::string& difference) {
        if (m_difference.empty())
            m_difference = difference;
    }

    const Book& m_a;
    const Book& m_b;
    Id<Plan> m_planA;
    Id<Plan> m_planB;
    std::map<std::pair<std::string_view, std::int64_t>, std::int64_t> m_same;
    std::string m_difference;
};

inline std::string differenceOf(const Book& a, Id<Plan> planA, const Book& b, Id<Plan> planB) {
    return PlanCompare(a, planA, b, planB).difference();
}

} // namespace miterbook
