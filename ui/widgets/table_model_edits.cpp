// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/table_model_base.h"

#include "desk/text.h"

#include <algorithm>

// What is done to a table's rows: each gesture becomes one Edit.

namespace miterbook {

bool TableModelBase::isLocked(const CellWrite& cell) const {
    const bool isNew = cell.row >= realRows();
    return !column(cell.column).typed || (isNew && (!m_blank || cell.typed.trimmed().isEmpty()))
        || markOf(cell.row) == RowMark::removed;
}

RowBox TableModelBase::draft(int row) const {
    return isReal(row) ? m_source->copy(m_rows[at(row)].get()) : m_source->blank(row - realRows());
}

bool TableModelBase::type(void* draft, const CellWrite& cell, Gesture gesture) const {
    const int c = cell.column;
    const bool same = isReal(cell.row) && m_source->text(draft, c, book()) == cell.typed;
    if (same || !m_source->applies(draft, c))
        return true;
    const auto put = m_source->put(draft, c, cell.typed, book());
    return put || refuse(gesture, cell, put.error());
}

bool TableModelBase::writeCells(const std::vector<CellWrite>& cells, Gesture gesture) {
    std::map<int, RowBox> touched;
    for (const CellWrite& cell : cells) {
        if (isLocked(cell))
            continue;
        auto it = touched.find(cell.row);
        if (it == touched.end())
            it = touched.emplace(cell.row, draft(cell.row)).first;
        if (!type(it->second.get(), cell, gesture))
            return false;
    }
    std::vector<const void*> kept;
    bool added = true;
    for (auto& [place, row] : touched) {
        if (isReal(place) && m_source->same(row.get(), m_rows[at(place)].get()))
            continue;
        m_source->own(row.get());
        if (const auto checked = m_source->check(row.get()); !checked) {
            const auto cell = std::ranges::find(cells, place, &CellWrite::row);
            return refuse(gesture, *cell, checked.error());
        }
        added = added && !isReal(place);
        kept.push_back(row.get());
    }
    return kept.empty() || performTyped(editOf(added ? "Add" : "Revise", kept, &TableRows::store));
}

bool TableModelBase::removeRowsAt(const std::vector<int>& rows) {
    std::vector<const void*> gone;
    for (const int row : rows) {
        if (!m_source->fixedRows() && isReal(row) && markOf(row) != RowMark::removed)
            gone.push_back(m_rows[at(row)].get());
    }
    return gone.empty() || m_desk.perform(editOf("Remove", gone, &TableRows::remove));
}

bool TableModelBase::duplicateRows(const std::vector<int>& rows) {
    Boxes copies;
    std::vector<const void*> kept;
    for (const int row : rows) {
        if (m_source->fixedRows() || !isReal(row) || !m_blank)
            continue;
        const int n = static_cast<int>(copies.size());
        RowBox copy = m_source->copy(m_rows[at(row)].get());
        m_source->renew(copy.get(), m_source->blank(n).get(), n);
        if (const auto checked = m_source->check(copy.get()); !checked) {
            m_desk.refuse(checked.error());
            return false;
        }
        kept.push_back(copy.get());
        copies.push_back(std::move(copy));
    }
    return kept.empty() || performTyped(editOf("Copy", kept, &TableRows::store));
}

Edit TableModelBase::editOf(std::string_view verb, const std::vector<const void*>& rows,
    void (TableRows::*take)(EditBuilder&, const void*)) {
    const std::string what = rows.size() == 1
        ? m_source->title(rows.front())
        : std::to_string(rows.size()) + " rows of " + utf8(name());
    EditBuilder edit(book(), std::string(verb) + " " + what);
    for (const void* row : rows)
        (m_source.get()->*take)(edit, row);
    return edit.take();
}

bool TableModelBase::performTyped(const Edit& edit) {
    m_typing = true;
    const bool done = m_desk.perform(edit);
    m_typing = false;
    return done;
}

bool TableModelBase::refuse(Gesture gesture, const CellWrite& cell, const Error& error) const {
    std::string where;
    if (gesture == Gesture::paste)
        where = "Nothing was pasted. Row " + std::to_string(cell.line) + " of what was copied";
    else if (gesture == Gesture::bring)
        where = "Nothing was brought in. Line " + std::to_string(cell.line) + " of the file";
    if (!where.empty())
        where += ", column " + utf8(title(cell.column)) + ": ";
    m_desk.refuse({error.fault, where + error.sentence});
    return false;
}

} // namespace miterbook
