// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/random_rows.h"

#include "job/edit.h"

namespace miterbook {

namespace {

/// Adds rows of one kind: one alone where there is only one, some below each plan, or some.
class BookMaker {
public:
    BookMaker(std::uint32_t seed, int each)
        : m_rows(seed)
        , m_each(each) {}

    template <class Row>
    void add() {
        if constexpr (isSettings<Row>) {
            put(m_rows.row(m_book, Id<Row>(1), {}));
        } else if constexpr (belowPlan<Row>) {
            for (const Id<Plan> plan : plansOf(m_book))
                addSome<Row>(plan);
        } else {
            addSome<Row>({});
        }
    }

    Book take() { return std::move(m_book); }

private:
    template <class Row>
    void addSome(Id<Plan> plan) {
        for (int i = 0; i < m_each; ++i)
            put(m_rows.row(m_book, m_ids.next<Row>(), plan));
    }

    template <class Row>
    void put(Row row) {
        apply(m_book, Edit{"Add", {{std::nullopt, AnyRow(std::move(row))}}});
    }

    RandomRows m_rows;
    int m_each;
    IdSource m_ids{1};
    Book m_book;
};

} // namespace

Book randomBook(std::uint32_t seed, int each) {
    BookMaker maker(seed, each);
    forEachRowKind([&]<class Row>(RowKind<Row>) { maker.add<Row>(); });
    return maker.take();
}

std::vector<Id<Plan>> plansOf(const Book& book) {
    std::vector<Id<Plan>> plans;
    for (const auto& [id, plan] : book.jobs.of<Plan>())
        plans.push_back(id);
    return plans;
}

} // namespace miterbook
