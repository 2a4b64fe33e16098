// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/typed_date.h"

#include "basics/blank.h"
#include "basics/digits.h"
#include "basics/letters.h"
#include "basics/quote.h"

#include <array>
#include <cstdlib>
#include <optional>
#include <vector>

namespace miterbook {

namespace {

/// The numbers and words of a date, and what parts the first two.
struct DateParts {
    std::vector<int> numbers;
    int month = 0; ///< from a name; 0: none
    char mark = ' ';
};

/// 1 to 12 for a month's name or its first three letters or more; 0 for another word.
int monthCalled(const std::string& lower) {
    static constexpr std::array<std::string_view, 12> names{"january", "february", "march", "april",
        "may", "june", "july", "august", "september", "october", "november", "december"};
    if (lower.size() < 3)
        return 0;
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names.at(i).starts_with(lower))
            return static_cast<int>(i) + 1;
    }
    return 0;
}

bool isLetter(char c) {
    return c >= 'a' && c <= 'z';
}

/// Takes the text apart; nothing for what cannot be part of a date.
std::optional<DateParts> partsOf(std::string_view text) {
    DateParts parts;
    for (std::size_t i = 0; i < text.size();) {
        if (isDigit(text[i])) {
            int number = 0;
            std::size_t digits = 0;
            for (; i < text.size() && isDigit(text[i]) && digits < 5; ++i, ++digits)
                number = number * 10 + (text[i] - '0');
            parts.numbers.push_back(number);
        } else if (isLetter(lowered(text[i]))) {
            std::string name;
            for (; i < text.size() && isLetter(lowered(text[i])); ++i)
                name += lowered(text[i]);
            const int month = monthCalled(name);
            if (month == 0 || parts.month != 0)
                return std::nullopt;
            parts.month = month;
        } else if (std::string_view(" ,./-").find(text[i]) != std::string_view::npos) {
            if (parts.numbers.size() == 1 && parts.mark == ' ')
                parts.mark = text[i];
            ++i;
        } else {
            return std::nullopt;
        }
    }
    return parts;
}

Date dateOf(int year, int month, int day) {
    // std::chrono keeps no more than a byte of month and day.
    if (year < 0 || year > 9999 || month < 1 || month > 12 || day < 1 || day > 31)
        return noDate;
    const int full = year < 100 ? 2000 + year : year;
    return {std::chrono::year(full), std::chrono::month(static_cast<unsigned>(month)),
        std::chrono::day(static_cast<unsigned>(day))};
}

/// The day in this year, or in the last where it would be yet to come.
Date lastSuch(int month, int day, Date today) {
    const int year = static_cast<int>(today.year());
    const Date thisYear = dateOf(year, month, day);
    return thisYear.ok() && thisYear <= today ? thisYear : dateOf(year - 1, month, day);
}

/// The day in the last, this or the next year, whichever is nearest.
Date nearestSuch(int month, int day, Date today) {
    Date nearest = noDate;
    int least = 0;
    for (const int ahead : {1, 0, -1}) {
        const Date date = dateOf(static_cast<int>(today.year()) + ahead, month, day);
        if (!today.ok() || !date.ok())
            continue;
        const auto apart = std::chrono::sys_days(date) - std::chrono::sys_days(today);
        const int days = static_cast<int>(std::abs(apart.count()));
        if (!nearest.ok() || days < least) {
            nearest = date;
            least = days;
        }
    }
    return nearest;
}

/// What a day without a year means.
using SuchDay = Date (*)(int month, int day, Date today);

Date dateFrom(DateParts parts, bool monthFirst, Date today, SuchDay such) {
    std::vector<int>& numbers = parts.numbers;
    if (parts.month != 0) {
        if (numbers.size() == 1)
            return such(parts.month, numbers[0], today);
        return numbers.size() == 2 ? dateOf(numbers[1], parts.month, numbers[0]) : noDate;
    }
    if (numbers.size() == 3 && numbers[0] > 999)
        return dateOf(numbers[0], numbers[1], numbers[2]);
    if (numbers.size() != 2 && numbers.size() != 3)
        return noDate;
    const bool dayFirst = parts.mark == '.' || !monthFirst;
    const int month = numbers[dayFirst ? 1 : 0];
    const int day = numbers[dayFirst ? 0 : 1];
    return numbers.size() == 2 ? such(month, day, today) : dateOf(numbers[2], month, day);
}

Result<Date> parseAny(std::string_view text, bool monthFirst, Date today, SuchDay such) {
    const auto parts = partsOf(trimmed(text));
    const Date date = parts ? dateFrom(*parts, monthFirst, today, such) : noDate;
    const bool sensible = date.ok() && date.year() >= std::chrono::year(1990)
        && date.year() <= std::chrono::year(2199);
    if (!sensible)
        return badInput(inQuotes(text) + " is not a date; write it as 2026-11-25.");
    return date;
}

} // namespace

Result<Date> parseTypedDate(std::string_view text, bool monthFirst, Date today) {
    return parseAny(text, monthFirst, today, lastSuch);
}

Result<Date> parseNearDate(std::string_view text, bool monthFirst, Date today) {
    return parseAny(text, monthFirst, today, nearestSuch);
}

} // namespace miterbook
