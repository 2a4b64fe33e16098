// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/desk.h"
#include "job/any_row.h"
#include "widgets/table_spec.h"

#include <string>

namespace miterbook {

/// What the user calls a row: its noun and its mark, name or task.
template <class Row>
std::string spokenTitle(const Row& row) {
    std::string name;
    if constexpr (requires { row.mark.size(); })
        name = row.mark;
    if constexpr (requires { row.name.size(); }) {
        if (name.empty())
            name = row.name;
    } else if constexpr (requires { word(row.task); }) {
        name = word(row.task);
    } else if constexpr (requires { word(row.condition); }) {
        name = word(row.condition);
    }
    if constexpr (Described<Row>) {
        const std::string noun(Describe<Row>::noun);
        return name.empty() ? noun : noun + " " + name;
    }
    return name;
}

/// Builds the edits of a table: how rows are named, checked, kept and taken away.
template <class Row>
class TableEdits {
public:
    TableEdits(Desk& desk, const TableSpec<Row>& spec)
        : m_desk(desk)
        , m_spec(spec) {}

    std::string title(const Row& row) const {
        return m_spec.title ? m_spec.title(row) : spokenTitle(row);
    }
    /// "Revise window W4", or "Revise 3 rows of Windows".
    std::string sentence(std::string_view verb, const std::vector<Row>& rows) const {
        const std::string what = rows.size() == 1
            ? title(rows.front())
            : std::to_string(rows.size()) + " rows of " + m_spec.name.toStdString();
        return std::string(verb) + " " + what;
    }
    Result<void> check(const Row& row) const {
        return m_spec.check ? m_spec.check(row) : Result<void>();
    }

    /// A value somebody has typed over is the shop's own from then on.
    static void own(Row& row) {
        if constexpr (requires { row.origin = Origin::shop; })
            row.origin = Origin::shop;
    }

    void store(EditBuilder& edit, Row row) const {
        if (m_spec.store) {
            m_spec.store(edit, std::move(row));
            return;
        }
        if constexpr (Described<Row>) {
            if (!row.id)
                row.id = m_desk.ids().next<Row>();
            edit.put(std::move(row));
        }
    }
    void remove(EditBuilder& edit, const Row& row) const {
        if (m_spec.remove) {
            m_spec.remove(edit, row);
            return;
        }
        if constexpr (Described<Row>)
            edit.remove(row.id);
    }

private:
    Desk& m_desk;
    const TableSpec<Row>& m_spec;
};

} // namespace miterbook
