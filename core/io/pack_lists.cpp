// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/pack_lists.h"

#include "basics/length_text.h"
#include "basics/number_text.h"
#include "io/csv_table.h"
#include "io/decoded_text.h"

#include <algorithm>
#include <initializer_list>

namespace miterbook {

namespace {

constexpr int mostPieces = 50'000;
constexpr int mostSticks = 1'000'000;
constexpr Length longest = Length::inches(100'000);

Error inCell(int line, std::string_view column, const std::string& sentence) {
    return badInput("line " + std::to_string(line) + ", " + std::string(column) + ": " + sentence);
}

/// The columns of a list by the names in its first record.
class Columns {
public:
    explicit Columns(const CsvRecord& header) {
        for (const std::string& cell : header.cells)
            m_names.push_back(foldedText(cell));
    }

    Result<void> require(std::initializer_list<std::string_view> names) const {
        for (const std::string_view name : names) {
            if (std::ranges::find(m_names, name) == m_names.end())
                return badInput(
                    "There is no column \"" + std::string(name) + "\" in the first line.");
        }
        return {};
    }

    std::string_view cell(const CsvRecord& record, std::string_view name) const {
        const auto it = std::ranges::find(m_names, name);
        return it == m_names.end() ? std::string_view()
                                   : record.cell(static_cast<std::size_t>(it - m_names.begin()));
    }

private:
    std::vector<std::string> m_names;
};

/// A plain decimal number of inches, which may be longer than anything in a house: rounded to the
/// nanometre. Nothing for other text and more than nine digits on either side of the point.
std::optional<Length> plainInches(std::string_view text) {
    const std::size_t point = std::min(text.find('.'), text.size());
    const std::string_view part = point < text.size() ? text.substr(point + 1) : std::string_view();
    if (point == 0 || point > 9 || part.size() > 9)
        return std::nullopt;
    Wide value = 0;
    Wide scale = 1;
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (i == point)
            continue;
        if (text[i] < '0' || text[i] > '9')
            return std::nullopt;
        value = value * 10 + (text[i] - '0');
        scale *= i > point ? 10 : 1;
    }
    return Length::nanometres(roundedQuotient(value * Length::nmPerInch, scale));
}

Result<Length> readLength(const CsvRecord& record, std::string_view text) {
    const auto plain = plainInches(text);
    const Result<Length> read = plain ? Result<Length>(*plain) : parseLength(text);
    if (!read)
        return inCell(record.line, "length", read.error().sentence);
    if (*read <= Length() || *read > longest)
        return inCell(record.line, "length",
            "\"" + std::string(text) + "\" is not more than 0 and at most 100 000 in.");
    return read;
}

/// The rows below the header, each read by `readRow(columns, record)`.
template <class Row, class Fn>
Result<std::vector<Row>> readList(
    std::string_view bytes, std::initializer_list<std::string_view> needed, Fn&& readRow) {
    const auto table = readCsv(bytes);
    if (!table)
        return table.error();
    const Columns columns(table->records.front());
    if (auto there = columns.require(needed); !there)
        return there.error();
    std::vector<Row> rows;
    for (std::size_t i = 1; i < table->records.size(); ++i) {
        auto row = readRow(columns, table->records[i]);
        if (!row)
            return row.error();
        rows.push_back(std::move(row).value());
    }
    if (rows.empty())
        return badInput("There is nothing below the first line.");
    return rows;
}

Result<PackPiece> readPiece(const Columns& columns, const CsvRecord& record) {
    const auto length = readLength(record, columns.cell(record, "length"));
    if (!length)
        return length.error();
    const auto count = parseWhole(columns.cell(record, "count"), "count", 1, mostPieces);
    if (!count)
        return inCell(record.line, "count", count.error().sentence);
    return PackPiece{*length, *count, std::string(columns.cell(record, "label"))};
}

Result<PackStick> readStick(const Columns& columns, const CsvRecord& record) {
    const auto length = readLength(record, columns.cell(record, "length"));
    if (!length)
        return length.error();
    const auto price = parseMoney(columns.cell(record, "price"));
    if (!price)
        return inCell(record.line, "price", price.error().sentence);
    if (*price < Money())
        return inCell(record.line, "price", "a price cannot be negative.");
    PackStick stick{*length, *price, std::nullopt};
    if (const auto text = columns.cell(record, "have"); !text.empty()) {
        const auto have = parseWhole(text, "have", 0, mostSticks);
        if (!have)
            return inCell(record.line, "have", have.error().sentence);
        stick.have = *have;
    }
    return stick;
}

} // namespace

Result<std::vector<PackPiece>> readPieces(std::string_view bytes) {
    auto pieces = readList<PackPiece>(bytes, {"length", "count"}, readPiece);
    if (!pieces)
        return pieces;
    std::int64_t sum = 0;
    for (const PackPiece& piece : *pieces)
        sum += piece.count;
    if (sum > mostPieces)
        return badInput("There are " + std::to_string(sum)
            + " pieces; at most 50 000 can be cut at "
              "once.");
    return pieces;
}

Result<std::vector<PackStick>> readSticks(std::string_view bytes) {
    return readList<PackStick>(bytes, {"length", "price"}, readStick);
}

} // namespace miterbook
