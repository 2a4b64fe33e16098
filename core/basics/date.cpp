// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/date.h"

#include "basics/quote.h"

#include <array>
#include <charconv>

namespace miterbook {

namespace {

std::string padded(int value, std::size_t width) {
    std::string digits = std::to_string(value);
    return digits.size() < width ? std::string(width - digits.size(), '0') + digits : digits;
}

/// The digits of text[from, from + count) as a number; -1 when they are not all digits.
int digits(std::string_view text, std::size_t from, std::size_t count) {
    int value = 0;
    const char* end = text.data() + from + count;
    const auto [stop, fault] = std::from_chars(text.data() + from, end, value);
    return fault == std::errc() && stop == end ? value : -1;
}

} // namespace

std::string isoDate(Date date) {
    if (!date.ok())
        return {};
    return padded(static_cast<int>(date.year()), 4) + '-'
        + padded(static_cast<int>(static_cast<unsigned>(date.month())), 2) + '-'
        + padded(static_cast<int>(static_cast<unsigned>(date.day())), 2);
}

Result<Date> parseIsoDate(std::string_view text) {
    if (text.empty())
        return noDate;
    if (text.size() == 10 && text[4] == '-' && text[7] == '-') {
        const int year = digits(text, 0, 4);
        const int month = digits(text, 5, 2);
        const int day = digits(text, 8, 2);
        if (year > 0 && month > 0 && day > 0) {
            const Date date{std::chrono::year(year),
                std::chrono::month(static_cast<unsigned>(month)),
                std::chrono::day(static_cast<unsigned>(day))};
            if (date.ok())
                return date;
        }
    }
    return badInput(inQuotes(text) + " is not a date; write it as 2026-11-25.");
}

std::string formatDate(Date date, bool monthFirst) {
    if (!date.ok())
        return {};
    const auto month = static_cast<unsigned>(date.month());
    const auto day = static_cast<unsigned>(date.day());
    const std::string year = std::to_string(static_cast<int>(date.year()));
    if (monthFirst)
        return std::to_string(month) + '/' + std::to_string(day) + '/' + year;
    static constexpr std::array names{
        "Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"};
    return std::to_string(day) + ' ' + names.at(month - 1) + ' ' + year;
}

Date addDays(Date date, int days) {
    if (!date.ok())
        return noDate;
    return Date(std::chrono::sys_days(date) + std::chrono::days(days));
}

} // namespace miterbook
