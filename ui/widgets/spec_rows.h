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

/// The rows of a TableSpec.
template <class Row>
class SpecRows final : public TableRows {
public:
    SpecRows(Desk& desk, TableSpec<Row> spec)
        : m_desk(desk)
        , m_spec(std::move(spec)) {}

    QString name() const override { return m_spec.name; }
    QString emptyHint() const override { return m_spec.emptyHint; }
    int columns() const override { return static_cast<int>(m_spec.columns.size()); }
    ColumnFacts column(int c) const override {
        const Column<Row>& column = at(c);
        return {.title = column.title,
            .kind = column.kind,
            .typed = column.edit != nullptr,
            .numbered = column.number != nullptr,
            .whereFrom = column.whereFrom != nullptr,
            .summed = column.summed,
            .chosen = column.choices != nullptr,
            .letters = column.letters,
            .write = column.write};
    }
    bool fixedRows() const override { return m_spec.fixedRows; }
    bool hasHead() const override { return bool(m_spec.head); }

    std::vector<RowBox> read() const override {
        std::vector<RowBox> boxes;
        for (Row& row : m_spec.rows())
            boxes.push_back(boxed(std::move(row)));
        return boxes;
    }
    std::int64_t key(const void* row, std::size_t place) const override {
        if (m_spec.key)
            return m_spec.key(in(row));
        if constexpr (requires(const Row& r) { r.id.value(); })
            return in(row).id.value();
        else
            return static_cast<std::int64_t>(place);
    }
    RowBox blank(int n) const override {
        return m_spec.blank ? boxed(m_spec.blank(n)) : RowBox(nullptr, [](void*) {});
    }
    RowBox copy(const void* row) const override { return boxed(Row(in(row))); }
    bool same(const void* a, const void* b) const override { return in(a) == in(b); }

    QString text(const void* row, int c, const Book& book) const override {
        return at(c).textOf(in(row), book);
    }
    std::int64_t number(const void* row, int c) const override {
        return at(c).number ? at(c).number(in(row)) : 0;
    }
    QString written(std::int64_t number, const void* row, int c, const Book& book) const override {
        return at(c).written(number, in(row), book);
    }
    bool applies(const void* row, int c) const override {
        return !at(c).applies || at(c).applies(in(row));
    }
    QString whereFrom(const void* row, int c, const Book& book) const override {
        return at(c).whereFrom ? at(c).whereFrom(in(row), book) : QString();
    }
    QStringList choices(const void* row, int c, const Book& book) const override {
        return at(c).choices ? at(c).choices(in(row), book) : QStringList();
    }
    RowMark mark(const void* row) const override {
        return m_spec.mark ? m_spec.mark(in(row)) : RowMark::plain;
    }
    QString head(const void* row) const override {
        return m_spec.head ? m_spec.head(in(row)) : QString();
    }

    Result<void> put(void* row, int c, const QString& typed, const Book& book) const override {
        return at(c).edit(in(row), typed, book);
    }
    void own(void* row) const override {
        if constexpr (requires(Row & r) { r.origin = Origin::shop; })
            in(row).origin = Origin::shop;
    }
    void renew(void* copy, const void* fresh, int n) const override {
        if constexpr (requires(Row & r) { r.id; })
            in(copy).id = in(fresh).id;
        if constexpr (requires(Row & r) { r.position; })
            in(copy).position = in(fresh).position;
        if (m_spec.copied)
            m_spec.copied(in(copy), n);
    }
    Result<void> check(const void* row) const override {
        return m_spec.check ? m_spec.check(in(row)) : Result<void>();
    }
    std::string title(const void* row) const override {
        return m_spec.title ? m_spec.title(in(row)) : spokenTitle(in(row));
    }
    void store(EditBuilder& edit, const void* row) override {
        if (m_spec.store) {
            m_spec.store(edit, in(row));
        } else if constexpr (Described<Row>) {
            Row kept = in(row);
            if (!kept.id)
                kept.id = m_desk.ids().next<Row>();
            edit.put(std::move(kept));
        }
    }
    void remove(EditBuilder& edit, const void* row) override {
        if (m_spec.remove)
            m_spec.remove(edit, in(row));
        else if constexpr (Described<Row>)
            edit.remove(in(row).id);
    }

private:
    static Row& in(void* row) { return *static_cast<Row*>(row); }
    static const Row& in(const void* row) { return *static_cast<const Row*>(row); }
    const Column<Row>& at(int c) const { return m_spec.columns[static_cast<std::size_t>(c)]; }

    Desk& m_desk;
    TableSpec<Row> m_spec;
};

} // namespace miterbook
