// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "job/any_row.h"

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace miterbook {

/// One row before and after. No before: the row is new. No after: it is removed. Where both are
/// there they are of the same kind and id.
struct Change {
    std::optional<AnyRow> before;
    std::optional<AnyRow> after;

    /// The row that is there: after, or before when removed.
    const AnyRow& row() const { return after ? *after : *before; }
    bool operator==(const Change&) const = default;
};

/// Whether any of the changes is of a row of these kinds.
template <BookRow... Rows>
bool touches(const std::vector<Change>& changes) {
    return std::ranges::any_of(
        changes, [](const Change& change) { return change.row().isAnyOf<Rows...>(); });
}

/// One gesture of the user: a sentence for the undo list and journal ("Revise window W4"), and what
/// it changes.
struct Edit {
    std::string sentence;
    std::vector<Change> changes;

    bool empty() const { return changes.empty(); }
    bool operator==(const Edit&) const = default;
};

/// The edit that takes `edit` back.
Edit inverse(const Edit& edit);

/// Whether the book holds what the edit's `before` rows say; Fault::conflict with a sentence if
/// not.
Result<void> check(const Book& book, const Edit& edit);

/// Puts the edit's rows into the book. The edit must have passed check().
void apply(Book& book, const Edit& edit);

/// The highest id among the rows of an edit; 0 for none.
std::int64_t highestId(const Edit& edit);

/// Gathers the changes of one gesture. Looks up what the book holds, so callers only say what shall
/// be; a second put of the same row replaces the first.
class EditBuilder {
public:
    EditBuilder(const Book& book, std::string sentence)
        : m_book(book)
        , m_edit{std::move(sentence), {}} {}

    /// Adds or changes a row. Putting a row as it already is changes nothing.
    EditBuilder& put(AnyRow row);
    /// Removes a row; nothing when it is not there.
    template <BookRow Row>
    EditBuilder& remove(Id<Row> id) {
        return remove(kindOf<Row>, id.value());
    }
    /// The row as the edit will leave it; nullptr when it will not be there.
    template <BookRow Row>
    const Row* find(Id<Row> id) const {
        const Change* change = changeOf(kindOf<Row>, id.value());
        return change ? rowIn<Row>(change->after) : findRow(m_book, id);
    }
    Edit take() { return std::move(m_edit); }
    /// As it is before the edit.
    const Book& book() const { return m_book; }

private:
    EditBuilder& remove(std::size_t kind, std::int64_t id);
    const Change* changeOf(std::size_t kind, std::int64_t id) const;

    const Book& m_book;
    Edit m_edit;
};

/// An edit of one row.
inline Edit putEdit(const Book& book, std::string sentence, AnyRow row) {
    return EditBuilder(book, std::move(sentence)).put(std::move(row)).take();
}

} // namespace miterbook
