// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/every_edit.h"

#include "job/row_title.h"
#include "job/start_house.h"
#include "job/whole_edit.h"

namespace miterbook {

namespace {

class EditMaker {
public:
    EditMaker(const Book& book, std::uint32_t seed)
        : m_book(book)
        , m_rows(seed)
        , m_ids(highestId(wholeEdit(book, "")) + 1000) {}

    template <class Row>
    void make() {
        Row row = present<Row>();
        add("Add", std::nullopt, m_rows.row(m_book, m_ids.next<Row>(), planFor(row)));
        remove(row);
        for (std::size_t n = 0; n < fieldCount<Row>; ++n) {
            Row changed = row;
            if (m_rows.changeField(m_book, changed, n))
                add("Change field " + std::to_string(n) + " of", row, changed);
        }
    }

    std::vector<Edit> take() { return std::move(m_edits); }

private:
    /// The last row of a kind, in the last plan for those below one.
    template <class Row>
    Row present() const {
        if constexpr (!belowPlan<Row>)
            return last(rowsOf<Row>(m_book));
        else
            return last(std::prev(m_book.sheets.end())->second.template of<Row>());
    }

    template <class Row>
    void remove(const Row& row) {
        add("Remove", row, std::nullopt);
    }
    /// A plan goes with everything below it.
    void remove(const Plan& plan) { m_edits.push_back(removePlan(m_book, plan.id)); }

    template <class Row>
    static const Row& last(const Table<Row>& table) {
        return std::ranges::prev(table.end())->second;
    }

    template <class Row>
    static Id<Plan> planFor(const Row& row) {
        if constexpr (belowPlan<Row>)
            return row.plan;
        else
            return {};
    }

    void add(const std::string& what, std::optional<AnyRow> before, std::optional<AnyRow> after) {
        Change change{std::move(before), std::move(after)};
        const std::string sentence = what + " " + titleOf(change.row());
        m_edits.push_back({sentence, {std::move(change)}});
    }

    const Book& m_book;
    RandomRows m_rows;
    IdSource m_ids;
    std::vector<Edit> m_edits;
};

} // namespace

std::vector<Edit> everyEdit(const Book& book, std::uint32_t seed) {
    EditMaker maker(book, seed);
    forEachRowKind([&]<class Row>(RowKind<Row>) { maker.make<Row>(); });
    return maker.take();
}

} // namespace miterbook
