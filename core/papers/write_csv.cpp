// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/write_paper.h"

#include "papers/exact_numbers.h"
#include "papers/plain_text.h"

#include <array>

namespace miterbook {

namespace {

/// What a spreadsheet may take for the beginning of a formula, the wide forms among them [pub:
/// OWASP, CSV Injection].
bool startsFormula(std::string_view text) {
    constexpr std::array<std::string_view, 10> starts{"=", "+", "-", "@", "\t", "\r",
        "\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"};
    for (const std::string_view start : starts) {
        if (text.starts_with(start))
            return true;
    }
    return text.starts_with('\n');
}

/// A field in quotes where RFC 4180 asks for them.
std::string field(std::string_view text) {
    std::string value = validUtf8(text);
    if (startsFormula(value))
        value.insert(0, 1, '\'');
    if (value.find_first_of(",\"\r\n") == std::string::npos)
        return value;
    std::string quoted = "\"";
    for (const char c : value) {
        if (c == '"')
            quoted += '"';
        quoted += c;
    }
    return quoted + '"';
}

std::string field(const Cell& cell) {
    return isJsonNumber(cell.exact) ? cell.exact : field(std::string_view(cell.text));
}

void writeTable(const PaperTable& table, std::string& csv) {
    if (!table.title.empty())
        csv += field(std::string_view(table.title)) + "\r\n";
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        csv += (i == 0 ? "" : ",") + field(std::string_view(table.columns[i].title));
    csv += "\r\n";
    for (const PaperTable::Row& row : table.rows) {
        for (std::size_t i = 0; i < table.columns.size(); ++i)
            csv += (i == 0 ? "" : ",")
                + (i < row.cells.size() ? field(row.cells[i]) : std::string());
        csv += "\r\n";
    }
}

} // namespace

std::string paperCsv(const Paper& paper) {
    std::string csv;
    for (const Block& block : paper.blocks) {
        const std::optional<PaperTable> table = tableIn(block);
        if (!table)
            continue;
        if (!csv.empty())
            csv += "\r\n";
        writeTable(*table, csv);
    }
    return csv;
}

} // namespace miterbook
