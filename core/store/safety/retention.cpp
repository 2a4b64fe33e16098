// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/safety/retention.h"

#include <algorithm>
#include <limits>
#include <set>

namespace miterbook {

namespace {

bool later(const Backup& a, const Backup& b) {
    return std::pair(a.at, a.path) > std::pair(b.at, b.path);
}

/// Keeps the latest backup of each of the last so many periods that have one.
class Periods {
public:
    explicit Periods(int most)
        : m_most(static_cast<std::size_t>(most)) {}

    bool keeps(int period) {
        if (m_seen.contains(period) || m_seen.size() >= m_most)
            return false;
        m_seen.insert(period);
        return true;
    }

private:
    std::size_t m_most;
    std::set<int> m_seen;
};

int dayNumber(Date day) {
    return std::chrono::sys_days(day).time_since_epoch().count();
}

/// Weeks begin on Monday; 1970-01-01 was a Thursday.
int weekNumber(Date day) {
    constexpr int thursday = 3;
    return (dayNumber(day) + thursday) / 7;
}

int monthNumber(Date day) {
    return int(day.year()) * 12 + static_cast<int>(unsigned(day.month()));
}

} // namespace

std::vector<Backup> toLetGo(std::vector<Backup> backups, const Retention& retention) {
    std::ranges::sort(backups, later);
    Periods days(retention.days);
    Periods weeks(retention.weeks);
    Periods months(retention.months);
    Periods years(std::numeric_limits<int>::max());
    std::vector<Backup> go;
    std::int64_t bytes = 0;
    int place = 0;
    for (const Backup& backup : backups) {
        const Date day = dayOf(backup);
        bool keep = ++place <= retention.newest;
        // Each is asked, so that a backup kept for one reason also stands for the others.
        keep = days.keeps(dayNumber(day)) || keep;
        keep = weeks.keeps(weekNumber(day)) || keep;
        keep = months.keeps(monthNumber(day)) || keep;
        keep = years.keeps(int(day.year())) || keep;
        const bool fits = bytes + backup.bytes <= retention.bytes || place <= retention.newest;
        if (keep && fits)
            bytes += backup.bytes;
        else
            go.push_back(backup);
    }
    std::ranges::reverse(go);
    return go;
}

} // namespace miterbook
