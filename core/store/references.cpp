// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/references.h"

#include "job/row_title.h"
#include "job/stored_form.h"
#include "store/any_row_store.h"
#include "store/row_sql.h"

#include <vector>

namespace miterbook {

namespace {

template <class T>
struct Target;

template <class Row>
struct Target<Id<Row>> {
    static constexpr std::string_view table = Describe<Row>::table;
    static constexpr std::string_view noun = Describe<Row>::noun;
};

/// A column that names a row of another table.
struct Reference {
    std::string_view table;
    std::string_view column;
    std::string_view target;     ///< table
    std::string_view targetNoun; ///< what the user calls a row of it
};

/// All of them, from the descriptions.
const std::vector<Reference>& references() {
    static const std::vector<Reference> all = [] {
        std::vector<Reference> list;
        forEachRowKind([&]<class Row>(RowKind<Row>) {
            forEachField<Row>([&]<class Member>(const Field<Row, Member>& field) {
                if constexpr (isId<Member>) {
                    if (field.name != "id")
                        list.push_back({Describe<Row>::table, field.name, Target<Member>::table,
                            Target<Member>::noun});
                }
            });
        });
        return list;
    }();
    return all;
}

/// A whole number that the book answers with; 0 where it cannot or has none.
std::int64_t ask(Connection& connection, const std::string& sql) {
    const auto answer = connection.readOne(sql);
    return answer ? answer->toLongLong() : 0;
}

/// ` FROM "stick" WHERE "profile" = 7`
std::string where(std::string_view table, std::string_view column, std::int64_t value) {
    return " FROM " + quoted(table) + " WHERE " + quoted(column) + " = " + std::to_string(value);
}

/// `opening "W4" and 2 more`, by one reference to a removed row; empty when nothing uses it so.
std::string users(Connection& connection, const Reference& by, std::int64_t id) {
    const std::string rows = where(by.table, by.column, id);
    const std::int64_t count = ask(connection, "SELECT count(*)" + rows);
    if (count == 0)
        return {};
    const std::int64_t first = ask(connection, "SELECT min(\"id\")" + rows);
    const auto row = findAnyRow(connection, by.table, first);
    std::string text = row && *row ? titleOf(**row) : std::string(by.table);
    if (count > 1)
        text += " and " + std::to_string(count - 1) + " more";
    return text;
}

std::string stillUsed(Connection& connection, const AnyRow& removed) {
    for (const Reference& reference : references()) {
        if (reference.target != removed.table())
            continue;
        const std::string by = users(connection, reference, removed.id());
        if (!by.empty())
            return "The " + titleOf(removed) + " is still used by the " + by + ".";
    }
    return {};
}

std::string missing(Connection& connection, const AnyRow& written) {
    for (const Reference& reference : references()) {
        if (reference.table != written.table())
            continue;
        const std::int64_t named = ask(connection,
            "SELECT " + quoted(reference.column) + where(reference.table, "id", written.id()));
        const std::string target = where(reference.target, "id", named);
        if (named != 0 && ask(connection, "SELECT count(*)" + target) == 0) {
            return "The " + titleOf(written) + " names a " + std::string(reference.targetNoun)
                + " that is not in the book.";
        }
    }
    return {};
}

} // namespace

Error explainBrokenReference(Connection& connection, const Edit& edit) {
    for (const Change& change : edit.changes) {
        const std::string why = change.after ? missing(connection, *change.after)
                                             : stillUsed(connection, *change.before);
        if (!why.empty())
            return {Fault::conflict, why};
    }
    return {Fault::conflict, "Something in the book would be left naming what is not there."};
}

} // namespace miterbook
