// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/clock.h"

#include <array>
#include <ctime>

namespace miterbook {

namespace {

std::tm utcNow() {
    const std::time_t now = std::time(nullptr);
    std::tm parts{};
    gmtime_r(&now, &parts);
    return parts;
}

} // namespace

Date SystemClock::today() const {
    const std::time_t now = std::time(nullptr);
    std::tm parts{};
    localtime_r(&now, &parts);
    return {std::chrono::year(parts.tm_year + 1900),
        std::chrono::month(static_cast<unsigned>(parts.tm_mon + 1)),
        std::chrono::day(static_cast<unsigned>(parts.tm_mday))};
}

std::string SystemClock::timestamp() const {
    const std::tm parts = utcNow();
    std::array<char, 32> buffer{};
    const std::size_t length = std::strftime(
        buffer.data(), buffer.size(), "%Y-%m-%dT%H:%M:%SZ", &parts);
    return {buffer.data(), length};
}

} // namespace miterbook
