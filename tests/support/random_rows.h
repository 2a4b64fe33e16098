// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"
#include "support/random_values.h"

#include <cstdint>
#include <iterator>

namespace miterbook {

/// Makes rows of any kind with every field filled, driven by Describe, and changes a row's fields
/// one at a time. References go to rows that the book has; rows below a plan name only rows below
/// it. The values fit their types; whether a carpenter would believe them is not asked.
class RandomRows {
public:
    explicit RandomRows(std::uint32_t seed)
        : m_values(seed) {}

    /// `plan` is where a row below a plan belongs; other rows take no notice of it.
    template <class Row>
    Row row(const Book& book, Id<Row> id, Id<Plan> plan) {
        Row made;
        forEachField<Row>([&](const auto& field) { fill(book, plan, made.*field.member); });
        keepPlace(made, id, plan);
        return made;
    }

    /// Gives the n-th field another value. False, and the row as it was, for a field that cannot
    /// change (what the row is and where it belongs) or that has no other value to take.
    template <class Row>
    bool changeField(const Book& book, Row& row, std::size_t n) {
        constexpr int tries = 50;
        const Row before = row;
        for (int i = 0; i < tries && row == before; ++i) {
            std::size_t at = 0;
            forEachField<Row>([&](const auto& field) {
                if (at++ == n)
                    fill(book, planOf(row), row.*field.member);
            });
            keepPlace(row, before.id, planOf(before));
        }
        return row != before;
    }

    RandomValues& values() { return m_values; }

private:
    template <class Row>
    static Id<Plan> planOf(const Row& row) {
        if constexpr (belowPlan<Row>)
            return row.plan;
        else
            return {};
    }

    template <class Row>
    static void keepPlace(Row& row, Id<Row> id, Id<Plan> plan) {
        row.id = id;
        if constexpr (belowPlan<Row>)
            row.plan = plan;
    }

    template <class T>
    void fill(const Book&, Id<Plan>, T& value) {
        m_values.fill(value);
    }
    template <class Target>
    void fill(const Book& book, Id<Plan> plan, Id<Target>& id) {
        id = anyOf(tableOf<Target>(book, plan));
    }
    /// Options: two of the book's variants, if it has any.
    template <class Target>
    void fill(const Book& book, Id<Plan> plan, std::vector<Id<Target>>& list) {
        list.clear();
        for (int i = 0; i < 2; ++i) {
            if (const Id<Target> id = anyOf(tableOf<Target>(book, plan)))
                list.push_back(id);
        }
    }

    template <class Row>
    Id<Row> anyOf(const Table<Row>& table) {
        if (table.empty())
            return {};
        const auto step = static_cast<std::ptrdiff_t>(m_values.below(table.size()));
        return std::next(table.begin(), step)->first;
    }

    /// Where rows of a kind are found; for those below a plan that are named from elsewhere (the
    /// elevation of a house) the book's first plan.
    template <class Row>
    static const Table<Row>& tableOf(const Book& book, Id<Plan> plan) {
        if constexpr (!belowPlan<Row>) {
            return rowsOf<Row>(book);
        } else {
            static const Table<Row> none;
            if (plan)
                return book.sheet(plan).template of<Row>();
            return book.sheets.empty() ? none : book.sheets.begin()->second.template of<Row>();
        }
    }

    RandomValues m_values;
};

/// A book with `each` rows of every kind (below each of its plans), all fields filled.
Book randomBook(std::uint32_t seed, int each);

/// The ids of the plans of a book.
std::vector<Id<Plan>> plansOf(const Book& book);

} // namespace miterbook
