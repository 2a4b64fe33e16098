// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/csv_table.h"

#include "basics/blank.h"
#include "io/decoded_text.h"

#include <csv.h>

#include <algorithm>
#include <array>
#include <map>

namespace miterbook {

namespace {

constexpr std::size_t mostRecords = 100'000;
constexpr std::size_t mostColumns = 500;
constexpr std::size_t longestCell = 10'000;
constexpr std::size_t recordsToSniff = 30;

/// The next line of `text` with its line end (CR LF, LF or CR), taken off the front.
std::string_view takeLine(std::string_view& text) {
    std::size_t end = text.find_first_of("\r\n");
    if (end == std::string_view::npos)
        end = text.size();
    else
        end += text.substr(end, 2) == "\r\n" ? 2 : 1;
    const std::string_view line = text.substr(0, end);
    text.remove_prefix(end);
    return line;
}

/// libcsv with the line numbers that it does not keep.
class Parser {
public:
    Parser(char delimiter, std::size_t most)
        : m_most(most) {
        csv_init(&m_csv, 0);
        csv_set_delim(&m_csv, static_cast<unsigned char>(delimiter));
        m_table.delimiter = delimiter;
    }
    ~Parser() { csv_free(&m_csv); }
    Parser(const Parser&) = delete;
    Parser& operator=(const Parser&) = delete;

    /// Reads until the text or the number of records wanted is reached.
    Result<CsvTable> read(std::string_view text) {
        int line = 0;
        while (!text.empty() && m_table.records.size() < m_most && m_refusal.empty()) {
            ++line;
            if (!m_inRecord)
                m_record.line = line;
            feed(takeLine(text));
        }
        if (text.empty() && m_refusal.empty() && !finish())
            m_refusal = "opens a quote that is never closed.";
        if (!m_refusal.empty())
            return badInput("Line " + std::to_string(m_record.line) + " " + m_refusal);
        return std::move(m_table);
    }

private:
    void feed(std::string_view line) {
        m_inRecord = m_inRecord || !isBlank(line);
        csv_parse(&m_csv, line.data(), line.size(), &Parser::cell, &Parser::end, this);
    }

    /// Takes a last record without a line end; false when a quote is still open. Being strict
    /// earlier would refuse inch marks in cells without quotes.
    bool finish() {
        csv_set_opts(&m_csv, CSV_STRICT | CSV_STRICT_FINI);
        return csv_fini(&m_csv, &Parser::cell, &Parser::end, this) == 0;
    }

    static void cell(void* bytes, std::size_t size, void* self) {
        static_cast<Parser*>(self)->addCell({static_cast<const char*>(bytes), size});
    }
    static void end(int, void* self) { static_cast<Parser*>(self)->endRecord(); }

    void addCell(std::string_view text) {
        if (text.size() > longestCell)
            m_refusal = "has a cell of more than 10 000 letters; is a quote missing?";
        else if (m_record.cells.size() >= mostColumns)
            m_refusal = "has more than 500 columns.";
        else
            m_record.cells.push_back(trimmedText(text));
    }

    void endRecord() {
        bool empty = true;
        for (const std::string& each : m_record.cells)
            empty = empty && each.empty();
        if (!empty && m_table.records.size() >= mostRecords)
            m_refusal = "is beyond the 100 000 records that can be read at once.";
        else if (!empty)
            m_table.records.push_back(m_record);
        m_record.cells.clear();
        m_inRecord = false;
    }

    csv_parser m_csv{};
    std::size_t m_most;
    CsvTable m_table;
    CsvRecord m_record;
    bool m_inRecord = false;
    std::string m_refusal;
};

/// How well a delimiter fits: the records that have the commonest number of cells above one, and
/// that number.
std::pair<int, std::size_t> fit(std::string_view text, char delimiter) {
    const auto table = Parser(delimiter, recordsToSniff).read(text);
    if (!table)
        return {0, 0};
    std::map<std::size_t, int> recordsOf;
    for (const CsvRecord& record : table->records)
        ++recordsOf[record.cells.size()];
    std::pair<int, std::size_t> best{0, 0};
    for (const auto& [cells, records] : recordsOf) {
        if (cells > 1)
            best = std::max(best, std::pair(records, cells));
    }
    return best;
}

char sniffedDelimiter(std::string_view text) {
    char best = ',';
    auto bestFit = fit(text, best);
    for (const char delimiter : std::array{';', '\t'}) {
        const auto its = fit(text, delimiter);
        if (its > bestFit) {
            best = delimiter;
            bestFit = its;
        }
    }
    return best;
}

} // namespace

Result<CsvTable> readCsv(std::string_view bytes) {
    const auto text = decodedText(bytes);
    if (!text)
        return text.error();
    auto table = Parser(sniffedDelimiter(*text), mostRecords + 1).read(*text);
    if (table && table->records.empty())
        return badInput("There is nothing in the file.");
    return table;
}

} // namespace miterbook
