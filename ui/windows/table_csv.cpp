// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/table_csv.h"

#include "basics/quote.h"
#include "desk/text.h"
#include "io/csv_table.h"
#include "papers/write_paper.h"
#include "widgets/cell_look.h"

#include <algorithm>
#include <map>

namespace miterbook {

namespace {

QString cellOf(const TableModelBase& model, int row, int column) {
    return model.index(row, column).data(Qt::EditRole).toString();
}

/// Numbers go out without the commas that part thousands.
Cell csvCell(const TableModelBase& model, int row, int column) {
    const QString typed = cellOf(model, row, column);
    Cell cell{utf8(typed), {}};
    const CellKind kind = model.kind(column);
    if (isNumber(kind) && kind != CellKind::length)
        cell.exact = utf8(QString(typed).remove(QLatin1Char(',')));
    return cell;
}

/// The column that says which row is which.
int keyColumn(const TableModelBase& model) {
    for (int column = 0; column < model.columnCount(); ++column) {
        if (!model.isComputed(column))
            return column;
    }
    return 0;
}

bool alike(const QString& a, const QString& b) {
    return a.trimmed().compare(b.trimmed(), Qt::CaseInsensitive) == 0;
}

/// An apostrophe that keeps spreadsheets from reckoning is none of the text's own.
QString incoming(std::string_view cell) {
    constexpr std::string_view starts = "=+-@\t\r\n";
    const bool guarded = cell.size() > 1 && cell.front() == '\''
        && starts.find(cell[1]) != std::string_view::npos;
    return text(guarded ? cell.substr(1) : cell);
}

/// A CSV file laid against the columns and rows of a table.
class CsvOnTable {
public:
    CsvOnTable(const TableModelBase& model, CsvTable csv)
        : m_model(model)
        , m_csv(std::move(csv))
        , m_key(keyColumn(model)) {}

    Result<void> lay() {
        if (auto mapped = mapTitles(); !mapped)
            return mapped;
        std::map<int, int> lineOf;
        int fresh = m_model.realRows();
        for (std::size_t i = 1; i < m_csv.records.size(); ++i) {
            const CsvRecord& record = m_csv.records[i];
            const auto found = rowFor(record);
            if (!found)
                return found.error();
            if (*found < 0 && m_model.blankRow() < 0)
                return badInput(at(record) + "there is no " + inQuotes(utf8(keyOf(record)))
                    + " in the table, and rows are not added here.");
            const int row = *found < 0 ? fresh++ : *found;
            if (const auto [other, isNew] = lineOf.emplace(row, record.line); !isNew)
                return badInput(at(record) + "the row is the same as that of line "
                    + std::to_string(other->second) + ".");
            take(record, row);
        }
        return {};
    }
    const std::vector<CellWrite>& cells() const { return m_cells; }
    QStringList notUnderstood() const { return m_notUnderstood; }

private:
    static std::string at(const CsvRecord& record) {
        return "Line " + std::to_string(record.line) + ": ";
    }
    QString keyOf(const CsvRecord& record) const {
        const auto place = std::ranges::find(m_columns, m_key) - m_columns.begin();
        return incoming(record.cell(static_cast<std::size_t>(place)));
    }
    Result<void> mapTitles() {
        if (m_csv.records.empty())
            return badInput("The file has no row of titles.");
        for (const std::string& title : m_csv.records.front().cells) {
            const auto column = columnOf(text(title));
            if (!column)
                return column.error();
            if (*column < 0 && !title.empty())
                m_notUnderstood << text(title);
            m_columns.push_back(*column);
        }
        if (std::ranges::find(m_columns, m_key) == m_columns.end())
            return badInput("The file has no column " + inQuotes(utf8(m_model.title(m_key)))
                + ": without it no row can be told from another.");
        return {};
    }
    /// -1: no column of the table. Error: the column, in another unit.
    Result<int> columnOf(const QString& title) const {
        const QString bare = title.section(QLatin1Char(','), 0, 0);
        for (int column = 0; column < m_model.columnCount(); ++column) {
            if (alike(title, m_model.titleWithUnit(column)) || alike(title, m_model.title(column)))
                return column;
            if (bare != title && alike(bare, m_model.title(column)))
                return badInput("The column " + inQuotes(utf8(title)) + " is in another unit than "
                    + inQuotes(utf8(m_model.titleWithUnit(column))) + " of this book.");
        }
        return -1;
    }
    /// Cells of a record that a row has so already.
    int likeness(const CsvRecord& record, int row) const {
        int same = 0;
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            if (m_columns[i] >= 0)
                same += alike(incoming(record.cell(i)), cellOf(m_model, row, m_columns[i])) ? 1 : 0;
        }
        return same;
    }
    /// -1: a new row. Error: two rows that are as like it.
    Result<int> rowFor(const CsvRecord& record) const {
        const QString key = keyOf(record);
        if (key.isEmpty())
            return badInput(at(record) + "there is nothing under "
                + inQuotes(utf8(m_model.title(m_key))) + ".");
        int best = -1;
        int most = -1;
        bool isTie = false;
        for (int row = 0; row < m_model.realRows(); ++row) {
            if (!alike(key, cellOf(m_model, row, m_key)))
                continue;
            const int same = likeness(record, row);
            isTie = same == most;
            if (same > most) {
                most = same;
                best = row;
            }
        }
        if (isTie)
            return badInput(at(record) + "two rows of the table are called " + inQuotes(utf8(key))
                + "; give one of them another name first.");
        return best;
    }
    void take(const CsvRecord& record, int row) {
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            if (m_columns[i] >= 0)
                m_cells.push_back({row, m_columns[i], incoming(record.cell(i)), record.line});
        }
    }

    const TableModelBase& m_model;
    CsvTable m_csv;
    int m_key;
    std::vector<int> m_columns; ///< of the table, for each of the file; -1: none
    std::vector<CellWrite> m_cells;
    QStringList m_notUnderstood;
};

} // namespace

std::string tableCsv(const TableModelBase& model) {
    PaperTable table;
    for (int column = 0; column < model.columnCount(); ++column)
        table.columns.push_back({utf8(model.titleWithUnit(column))});
    for (int row = 0; row < model.realRows(); ++row) {
        PaperTable::Row cells;
        for (int column = 0; column < model.columnCount(); ++column)
            cells.cells.push_back(csvCell(model, row, column));
        table.rows.push_back(std::move(cells));
    }
    Paper paper;
    paper.blocks.emplace_back(std::move(table));
    return paperCsv(paper);
}

std::optional<BroughtIn> bringTableCsv(TableModelBase& model, std::string_view bytes) {
    const auto csv = readCsv(bytes);
    CsvOnTable laid(model, csv ? *csv : CsvTable());
    if (const Result<void> fits = csv ? laid.lay() : csv.error(); !fits) {
        model.desk().refuse(
            {fits.error().fault, "Nothing was brought in. " + fits.error().sentence});
        return {};
    }
    BroughtIn brought;
    brought.notUnderstood = laid.notUnderstood();
    QObject listener;
    QObject::connect(&model.desk(), &Desk::changed, &listener, [&](const Changes& changes) {
        for (const Change& change : changes)
            ++(change.before ? brought.changed : brought.added);
    });
    if (!model.writeCells(laid.cells(), TableModelBase::Gesture::bring))
        return {};
    brought.same = static_cast<int>(csv->records.size()) - 1 - brought.added - brought.changed;
    return brought;
}

} // namespace miterbook
