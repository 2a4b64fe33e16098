// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/time_limit.h"

#include <algorithm>
#include <ctime>
#include <fstream>
#include <limits>

#include <unistd.h>

namespace miterbook {

namespace {

constexpr double longestStart = 2; ///< an older program has done something before

/// Seconds since this process was started, from the kernel's books (proc(5), field 22 of stat:
/// ticks after boot). Below 0 when they cannot be read.
double processAge() {
    constexpr int fieldsBefore = 19; // between the name in brackets and the start time
    std::ifstream stat("/proc/self/stat");
    stat.ignore(std::numeric_limits<std::streamsize>::max(), ')');
    std::string skipped;
    for (int i = 0; i < fieldsBefore; ++i)
        stat >> skipped;
    double ticks = -1;
    timespec now{};
    if (!(stat >> ticks) || clock_gettime(CLOCK_BOOTTIME, &now) != 0)
        return -1;
    const double up = static_cast<double>(now.tv_sec) + static_cast<double>(now.tv_nsec) * 1e-9;
    return up - ticks / static_cast<double>(sysconf(_SC_CLK_TCK));
}

std::chrono::steady_clock::duration duration(double seconds) {
    return std::chrono::duration_cast<std::chrono::steady_clock::duration>(
        std::chrono::duration<double>(seconds));
}

} // namespace

TimeLimit::TimeLimit(double seconds)
    : m_begin(Clock::now())
    , m_seconds(seconds) {
    if (const double age = processAge(); age > 0 && age < longestStart)
        m_begin -= duration(age);
}

packing::Budget TimeLimit::budgetBefore(double reserve) const {
    const double left = m_seconds - passed();
    const auto end = m_begin + duration(m_seconds - std::min(reserve, left / 2));
    return packing::Budget(packing::Budget::noLimit, [end] { return Clock::now() >= end; });
}

double TimeLimit::passed() const {
    return std::chrono::duration<double>(Clock::now() - m_begin).count();
}

} // namespace miterbook
