// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/write_paper.h"

#include "papers/exact_numbers.h"
#include "papers/plain_text.h"

namespace miterbook {

namespace {

// Numbers are written as their exact decimals; a library would take them through a double.

std::string jsonString(std::string_view text) {
    constexpr std::string_view hex = "0123456789abcdef";
    std::string result = "\"";
    for (const char c : validUtf8(text)) {
        const auto byte = static_cast<unsigned char>(c);
        if (c == '"' || c == '\\')
            result += std::string{'\\', c};
        else if (c == '\n')
            result += "\\n";
        else if (byte < 0x20 || byte == 0x7F)
            result += std::string("\\u00") + hex[byte >> 4U] + hex[byte & 0xFU];
        else
            result += c;
    }
    return result + '"';
}

std::string valueOf(const Cell& cell) {
    return isJsonNumber(cell.exact) ? cell.exact : jsonString(cell.text);
}

template <class Items, class Write>
std::string listOf(const Items& items, std::string_view between, Write write) {
    std::string text;
    for (const auto& item : items) {
        if (!text.empty())
            text += between;
        text += write(item);
    }
    return text;
}

/// As many values as the table has columns: a group row's one text, then empty ones.
std::string rowOf(const PaperTable& table, const PaperTable::Row& row) {
    std::vector<Cell> cells = row.cells;
    cells.resize(table.columns.size());
    return "        [" + listOf(cells, ", ", valueOf) + ']';
}

std::string tableOf(const PaperTable& table) {
    const std::string rows = listOf(
        table.rows, ",\n", [&](const PaperTable::Row& row) { return rowOf(table, row); });
    return "    {\n      \"title\": " + jsonString(table.title) + ",\n      \"columns\": ["
        + listOf(
            table.columns, ", ", [](const PaperColumn& column) { return jsonString(column.title); })
        + "],\n      \"rows\": [" + (rows.empty() ? "" : '\n' + rows + "\n      ") + "]\n    }";
}

std::string tablesOf(const Paper& paper) {
    std::vector<PaperTable> tables;
    for (const Block& block : paper.blocks) {
        if (std::optional<PaperTable> table = tableIn(block))
            tables.push_back(std::move(*table));
    }
    const std::string text = listOf(tables, ",\n", tableOf);
    return text.empty() ? "[]" : "[\n" + text + "\n  ]";
}

std::string totalsOf(const Paper& paper) {
    const std::string text = listOf(paper.totals, ",\n", [](const auto& total) {
        return "    " + jsonString(total.first) + ": " + valueOf(total.second);
    });
    return text.empty() ? "{}" : "{\n" + text + "\n  }";
}

/// What a reader has to heed, such as that the paper is not complete.
std::vector<std::string> cautionsOf(const Paper& paper) {
    std::vector<std::string> lines;
    for (const Block& block : paper.blocks) {
        const auto* paragraph = std::get_if<Paragraph>(&block);
        if (paragraph && paragraph->style == Paragraph::Style::caution)
            lines.insert(lines.end(), paragraph->lines.begin(), paragraph->lines.end());
    }
    return lines;
}

} // namespace

std::string paperJson(const Paper& paper) {
    std::string json = "{\n  \"paper\": " + jsonString(paper.name)
        + ",\n  \"tables\": " + tablesOf(paper) + ",\n  \"totals\": " + totalsOf(paper);
    const std::vector<std::string> cautions = cautionsOf(paper);
    if (!cautions.empty())
        json += ",\n  \"cautions\": [" + listOf(cautions, ", ", jsonString) + ']';
    return json + "\n}\n";
}

} // namespace miterbook
