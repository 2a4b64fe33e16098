// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/text.h"
#include "widgets/cell_look.h"
#include "widgets/row_steps.h"
#include "widgets/table_edits.h"
#include "widgets/table_model_base.h"

#include <QCoreApplication>

#include <algorithm>
#include <map>
#include <optional>

namespace miterbook {

/// A table over rows of the book, or over rows computed from it. What is shown is read again after
/// every change; a typed cell becomes one Edit.
template <class Row>
class TableModel final : public TableModelBase {
public:
    TableModel(Desk& desk, TableSpec<Row> spec, QObject* parent = nullptr)
        : TableModelBase(desk, parent)
        , m_spec(std::move(spec))
        , m_rows(m_spec.rows())
        , m_keys(keysOf(m_rows)) {
        if (m_spec.blank)
            m_blank = m_spec.blank(0);
    }

    const std::vector<Row>& rows() const { return m_rows; }
    /// The row at a place; nullptr for the blank row.
    const Row* rowAt(int row) const { return isReal(row) ? &m_rows[at(row)] : nullptr; }

    QString name() const override { return m_spec.name; }
    QString emptyHint() const override { return m_spec.emptyHint; }
    CellKind kind(int c) const override { return column(c).kind; }
    bool isComputed(int c) const override { return !column(c).edit; }
    bool isSummed(int c) const override { return column(c).summed; }
    bool hasWhereFrom(int c) const override { return column(c).whereFrom; }
    QString title(int c) const override {
        return QCoreApplication::translate("Column", column(c).title);
    }
    int blankRow() const override { return m_blank ? static_cast<int>(m_rows.size()) : -1; }
    int rowCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_rows.size()) + (m_blank ? 1 : 0);
    }
    int columnCount(const QModelIndex& parent = {}) const override {
        return parent.isValid() ? 0 : static_cast<int>(m_spec.columns.size());
    }
    QStringList choices(const QModelIndex& index) const override {
        const auto& list = column(index.column()).choices;
        return list ? list(shown(index.row()), book()) : QStringList();
    }
    std::int64_t number(int row, int c) const override {
        const auto& number = column(c).number;
        return number ? number(shown(row)) : 0;
    }
    QString written(std::int64_t number, int c) const override {
        const auto& write = column(c).write;
        return write ? write(number, book()) : QString::number(number);
    }
    RowMark markOf(int row) const override {
        return isReal(row) && m_spec.mark ? m_spec.mark(m_rows[at(row)]) : RowMark::plain;
    }
    int rowOfKey(std::int64_t key) const override {
        const auto it = std::ranges::find(m_keys, key);
        return it == m_keys.end() ? -1 : static_cast<int>(it - m_keys.begin());
    }
    std::int64_t keyOfRow(int row) const override { return isReal(row) ? m_keys[at(row)] : 0; }

    QVariant headerData(int section, Qt::Orientation orientation, int role) const override {
        if (orientation == Qt::Vertical)
            return role == Qt::DisplayRole ? rowHeader(section) : QVariant();
        if (role == Qt::DisplayRole)
            return titleWithUnit(section);
        return role == Qt::TextAlignmentRole ? alignmentOf(kind(section)) : QVariant();
    }
    QVariant data(const QModelIndex& index, int role) const override;
    Qt::ItemFlags flags(const QModelIndex& index) const override;
    bool setData(const QModelIndex& index, const QVariant& value, int role) override;

    bool writeCells(const std::vector<CellWrite>& cells, Gesture gesture) override;
    bool removeRowsAt(const std::vector<int>& rows) override;
    bool duplicateRows(const std::vector<int>& rows) override;
    void refresh() override;

private:
    static std::size_t at(int row) { return static_cast<std::size_t>(row); }
    bool isReal(int row) const { return row >= 0 && at(row) < m_rows.size(); }
    const Column<Row>& column(int c) const { return m_spec.columns[at(c)]; }
    const Row& shown(int row) const { return isReal(row) ? m_rows[at(row)] : *m_blank; }
    QVariant rowHeader(int row) const {
        if (!isReal(row))
            return QString(QChar(u'*'));
        const QString words = m_spec.head ? m_spec.head(m_rows[at(row)]) : QString();
        const QString number = QString::number(row + 1);
        return words.isEmpty() ? number : number + QLatin1String("  ") + words;
    }
    bool means(int row, int c) const {
        return !column(c).applies || column(c).applies(shown(row));
    }
    TableEdits<Row> edits() { return TableEdits<Row>(m_desk, m_spec); }
    std::vector<std::int64_t> keysOf(const std::vector<Row>& rows) const;
    void takeBlankPlace(typename std::vector<Row>::const_iterator first,
        typename std::vector<Row>::const_iterator last);
    void move(std::vector<Row> rows, std::vector<std::int64_t> keys, const RowSteps& steps);
    void reorder(std::vector<Row> rows, std::vector<std::int64_t> keys);

    TableSpec<Row> m_spec;
    std::vector<Row> m_rows;
    std::vector<std::int64_t> m_keys;
    std::optional<Row> m_blank;
    bool m_typing = false; ///< an edit of ours is under way: new rows take the blank row's place
};

} // namespace miterbook

#include "widgets/table_model_parts.h"
