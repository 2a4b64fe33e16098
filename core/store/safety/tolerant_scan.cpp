// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/tolerant_scan.h"

#include "store/cell.h"

#include <algorithm>
#include <deque>

namespace miterbook {

namespace {

using Number = std::int64_t;

class Scan {
public:
    Scan(Connection& connection, std::string sql, std::size_t columns,
        const std::function<void(const Cells&)>& take)
        : m_connection(connection)
        , m_sql(std::move(sql))
        , m_take(take)
        , m_cells(columns) {}

    /// Reads from `low` to `high`. What fails is read in halves, the widest stretches first, so
    /// that what is sound is out before the patience for what is lost comes to its end.
    void read(Number low, Number high) {
        constexpr int patience = 4'000; // failures: some tenths of a second
        std::deque<std::pair<Number, Number>> stretches{{low, high}};
        for (int failures = 0; !stretches.empty() && failures < patience;) {
            const auto [from, to] = stretches.front();
            stretches.pop_front();
            Number next = from;
            if (from > to || readUntilFailure(from, to, next))
                continue;
            ++failures;
            if (next >= to) {
                ++m_gaps.ids;
                continue;
            }
            const Number middle = next + (to - next) / 2;
            stretches.emplace_back(next, middle);
            stretches.emplace_back(middle + 1, to);
        }
        for (const auto& [from, to] : stretches)
            m_gaps.ids += to - from + 1;
    }
    const Gaps& gaps() const { return m_gaps; }

private:
    /// Value: whether the end was reached; `next` is one behind the last row that was taken.
    bool readUntilFailure(Number low, Number high, Number& next) {
        auto statement = m_connection.prepare(m_sql);
        if (!statement)
            return false;
        statement->bind(numberCell(low));
        statement->bind(numberCell(high));
        if (!statement->run())
            return false;
        while (true) {
            const auto there = statement->step();
            if (!there)
                return false;
            if (!*there)
                return true;
            for (std::size_t i = 0; i < m_cells.size(); ++i)
                m_cells[i] = statement->value(static_cast<int>(i));
            const Number key = cellNumber(m_cells.front()).value_or(next - 1);
            if (key < next || key > high)
                return false; // a page that leads back or astray
            m_take(m_cells);
            if (key == high)
                return true;
            next = key + 1;
        }
    }

    Connection& m_connection;
    std::string m_sql;
    const std::function<void(const Cells&)>& m_take;
    Cells m_cells;
    Gaps m_gaps;
};

std::string joined(const std::vector<std::string>& columns) {
    std::string text;
    for (const std::string& column : columns)
        text += (text.empty() ? "" : ", ") + column;
    return text;
}

/// The highest key that any sound way leads to; the book's last id where none does.
Number highestKey(Connection& connection, const std::string& table, const std::string& key) {
    const auto highest = connection.readOne("SELECT max(" + key + ") FROM " + table);
    if (highest)
        return cellNumber(*highest).value_or(0);
    const auto last = connection.readOne("SELECT last_id FROM book_info");
    constexpr Number fallback = 4'000'000;
    return last ? std::max<Number>(cellNumber(*last).value_or(fallback), fallback / 4) : fallback;
}

} // namespace

Result<Gaps> scanAround(Connection& connection, const std::string& table,
    const std::vector<std::string>& columns, const std::function<void(const Cells&)>& take) {
    const std::string& key = columns.front();
    const std::string sql = "SELECT " + joined(columns) + " FROM " + table + " WHERE " + key
        + " BETWEEN ? AND ? ORDER BY " + key;
    if (auto prepared = connection.prepare(sql); !prepared)
        return prepared.error();
    Scan scan(connection, sql, columns.size(), take);
    scan.read(1, highestKey(connection, table, key));
    return scan.gaps();
}

} // namespace miterbook
