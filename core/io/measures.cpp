// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/measures.h"

#include "basics/digits.h"
#include "basics/length_text.h"
#include "basics/letters.h"
#include "basics/number_text.h"
#include "basics/quote.h"
#include "cut/cut_checks.h"
#include "cut/opening_units.h"
#include "io/csv_table.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>
#include <set>

namespace miterbook {

namespace {

/// A file without numbers tells the order by its rows, which come before openings it does not name.
constexpr int fileStep = placeStep / 100;

enum class MeasureColumn {
    none,
    opening,
    number,
    width,
    widthTop,
    widthMiddle,
    widthBottom,
    height,
    heightLeft,
    heightMiddle,
    heightRight,
    diagonalUp,
    diagonalDown,
    jamb,
    note,
};

struct ColumnName {
    std::string_view name;
    MeasureColumn column;
};

/// Titles without points, units and signs, in lower case.
constexpr std::array columnNames{
    ColumnName{"opening", MeasureColumn::opening},
    ColumnName{"mark", MeasureColumn::opening},
    ColumnName{"no", MeasureColumn::number},
    ColumnName{"order", MeasureColumn::number},
    ColumnName{"width", MeasureColumn::width},
    ColumnName{"width top", MeasureColumn::widthTop},
    ColumnName{"width mid", MeasureColumn::widthMiddle},
    ColumnName{"width middle", MeasureColumn::widthMiddle},
    ColumnName{"width bottom", MeasureColumn::widthBottom},
    ColumnName{"height", MeasureColumn::height},
    ColumnName{"height left", MeasureColumn::heightLeft},
    ColumnName{"height mid", MeasureColumn::heightMiddle},
    ColumnName{"height middle", MeasureColumn::heightMiddle},
    ColumnName{"height right", MeasureColumn::heightRight},
    ColumnName{"diag up", MeasureColumn::diagonalUp},
    ColumnName{"diagonal up", MeasureColumn::diagonalUp},
    ColumnName{"diagonal 1", MeasureColumn::diagonalUp},
    ColumnName{"diag down", MeasureColumn::diagonalDown},
    ColumnName{"diagonal down", MeasureColumn::diagonalDown},
    ColumnName{"diagonal 2", MeasureColumn::diagonalDown},
    ColumnName{"jamb", MeasureColumn::jamb},
    ColumnName{"proud", MeasureColumn::jamb},
    ColumnName{"note", MeasureColumn::note},
    ColumnName{"notes", MeasureColumn::note},
    ColumnName{"plan", MeasureColumn::none},
};

std::string plainTitle(std::string_view title) {
    std::string plain;
    for (const char each : title.substr(0, title.find_first_of(",("))) {
        const char c = lowered(each);
        if ((c >= 'a' && c <= 'z') || isDigit(c))
            plain += c;
        else if (c == ' ' && !plain.empty() && plain.back() != ' ')
            plain += ' ';
    }
    while (!plain.empty() && plain.back() == ' ')
        plain.pop_back();
    return plain;
}

std::optional<MeasureColumn> columnCalled(std::string_view title) {
    const std::string plain = plainTitle(title);
    for (const ColumnName& known : columnNames) {
        if (known.name == plain)
            return known.column;
    }
    return std::nullopt;
}

/// A length that may be negative, as a jamb's is.
Result<Length> signedLength(std::string_view text, LengthUnit unit) {
    if (!text.starts_with('-') && !text.starts_with('+'))
        return parseLength(text, unit);
    const auto size = parseLength(text.substr(1), unit);
    return size && text.front() == '-' ? Result<Length>(-*size) : size;
}

/// Reads records under one row of titles.
class MeasureReader {
public:
    MeasureReader(const Book& book, Id<Plan> plan, MeasureReading& reading)
        : m_unit(book.prices.shop().unit)
        , m_reading(reading) {
        const Plan* row = book.plan(plan);
        const SheetRows& sheet = book.sheet(plan);
        if (!row)
            return;
        for (OpeningUnit& unit : openingUnits(wholePlan(*row, sheet), sheet.of<Measure>())) {
            unit.measure.plan = plan;
            std::string name = lowered(unit.name);
            m_units.emplace(std::move(name), std::move(unit.measure));
        }
    }

    /// Whether a record names columns of a measure sheet.
    bool takeTitles(const CsvRecord& record) {
        std::vector<MeasureColumn> columns;
        std::vector<std::string> unknown;
        for (const std::string& cell : record.cells) {
            const auto column = columnCalled(cell);
            columns.push_back(column.value_or(MeasureColumn::none));
            if (!column && !cell.empty())
                unknown.push_back(cell);
        }
        const auto has = [&](MeasureColumn wanted) {
            return std::ranges::find(columns, wanted) != columns.end();
        };
        if (!has(MeasureColumn::opening) || std::ranges::none_of(columns, [](MeasureColumn c) {
                return c >= MeasureColumn::width;
            }))
            return false;
        m_columns = std::move(columns);
        m_reading.unmapped = std::move(unknown);
        return true;
    }
    bool hasTitles() const { return !m_columns.empty(); }

    void read(const CsvRecord& record) {
        const std::string opening(openingOf(record));
        if (opening.empty())
            return; // a title or a remark between tables
        const auto known = m_units.find(lowered(opening));
        if (known == m_units.end()) {
            reject(record, opening, "the house has no trimmed opening of that mark");
            return;
        }
        if (!m_seen.insert(known->first).second) {
            reject(record, opening, "it stands in the file twice");
            return;
        }
        Measure measure = known->second;
        for (std::size_t i = 0; i < m_columns.size(); ++i) {
            const auto put = this->put(measure, m_columns[i], record.cell(i));
            if (!put) {
                reject(record, opening, put.error().sentence);
                return;
            }
        }
        const bool isEmpty = readingsIn(measure) == 0 && measure.proud == Length()
            && measure.note.empty();
        if (isEmpty && !measure.id)
            return; // a line of the sheet that was not filled in
        if (measure.position == 0)
            measure.position = (static_cast<int>(m_reading.rows.size()) + 1) * fileStep;
        m_reading.rows.push_back(std::move(measure));
    }

private:
    std::string_view openingOf(const CsvRecord& record) const {
        const auto at = std::ranges::find(m_columns, MeasureColumn::opening) - m_columns.begin();
        return record.cell(static_cast<std::size_t>(at));
    }

    void reject(const CsvRecord& record, const std::string& opening, std::string reason) {
        m_reading.rejected.push_back({record.line, opening, std::move(reason)});
    }

    Result<void> put(Measure& measure, MeasureColumn column, std::string_view cell) const {
        if (cell.empty() || column == MeasureColumn::none || column == MeasureColumn::opening)
            return {};
        if (column == MeasureColumn::note) {
            measure.note = std::string(cell);
            return {};
        }
        if (column == MeasureColumn::number) {
            const auto number = parseWhole(cell, "The number of an opening", 1, 100'000);
            if (!number)
                return number.error();
            measure.position = *number * placeStep;
            return {};
        }
        const auto length = column == MeasureColumn::jamb ? signedLength(cell, m_unit)
                                                          : parseLength(cell, m_unit);
        if (!length)
            return length.error();
        set(measure, column, *length);
        return checkMeasure(measure);
    }

    static void set(Measure& m, MeasureColumn column, Length length) {
        using enum MeasureColumn;
        const bool both = column == width || column == height;
        if (column == widthTop || column == width)
            m.widthTop = length;
        if (column == widthBottom || column == width)
            m.widthBottom = length;
        if (column == heightLeft || column == height)
            m.heightLeft = length;
        if (column == heightRight || column == height)
            m.heightRight = length;
        if (both)
            return;
        if (column == widthMiddle)
            m.widthMiddle = length;
        else if (column == heightMiddle)
            m.heightMiddle = length;
        else if (column == diagonalUp)
            m.diagonalUp = length;
        else if (column == diagonalDown)
            m.diagonalDown = length;
        else if (column == jamb)
            m.proud = length;
    }

    LengthUnit m_unit;
    MeasureReading& m_reading;
    std::map<std::string, Measure> m_units; ///< by lower-case name
    std::vector<MeasureColumn> m_columns;
    std::set<std::string> m_seen;
};

} // namespace

std::string MeasureReading::sentence(const MeasureRejection& rejection) {
    return "line " + std::to_string(rejection.line) + ", " + rejection.opening + ": "
        + rejection.reason;
}

Result<MeasureReading> readMeasures(std::string_view bytes, const Book& book, Id<Plan> plan) {
    const auto table = readCsv(bytes);
    if (!table)
        return table.error();
    MeasureReading reading;
    MeasureReader reader(book, plan, reading);
    for (const CsvRecord& record : table->records) {
        if (!reader.takeTitles(record) && reader.hasTitles())
            reader.read(record);
    }
    if (!reader.hasTitles())
        return badInput("No row of titles was found: a measure file has a column \"opening\" and "
                        "columns such as \"width top\" and \"height left\".");
    return reading;
}

Edit measuresEdit(const Book& book, IdSource& ids, Id<Plan> plan, const MeasureReading& reading,
    std::string_view fileName) {
    const std::size_t count = reading.rows.size();
    EditBuilder edit(book,
        "Bring in " + std::to_string(count) + (count == 1 ? " measure from " : " measures from ")
            + std::string(fileName));
    for (Measure row : reading.rows) {
        row.plan = plan;
        if (!row.id)
            row.id = ids.next<Measure>();
        edit.put(std::move(row));
    }
    return edit.take();
}

} // namespace miterbook
