// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/blank.h"
#include "basics/digits.h"
#include "basics/number_text.h"
#include "basics/quote.h"

#include <algorithm>
#include <optional>

namespace miterbook {

namespace {

/// Takes the commas out of "1,234,567"; nothing where a comma is no thousands mark.
std::optional<std::string> withoutThousands(std::string_view whole) {
    std::string digits;
    std::size_t group = 0;
    bool grouped = false;
    for (const char c : whole) {
        if (c == ',') {
            if (group == 0 || group > 3 || (grouped && group != 3))
                return std::nullopt;
            grouped = true;
            group = 0;
        } else if (isDigit(c)) {
            digits += c;
            ++group;
        } else {
            return std::nullopt;
        }
    }
    if (grouped && group != 3)
        return std::nullopt;
    return digits;
}

/// A decimal number times 10^places; nothing when it is not one or has more decimals than that.
std::optional<std::int64_t> decimal(std::string_view text, int places) {
    const bool negative = text.starts_with('-');
    if (negative)
        text.remove_prefix(1);
    const std::size_t point = std::min(text.find('.'), text.size());
    const auto whole = withoutThousands(text.substr(0, point));
    std::string fraction(point < text.size() ? text.substr(point + 1) : std::string_view());
    if (!whole || (whole->empty() && fraction.empty()) || whole->size() > 12)
        return std::nullopt;
    if (!std::ranges::all_of(fraction, isDigit)
        || fraction.size() > static_cast<std::size_t>(places))
        return std::nullopt;
    fraction.resize(static_cast<std::size_t>(places), '0');
    std::int64_t value = 0;
    for (const char c : *whole + fraction)
        value = value * 10 + (c - '0');
    return negative ? -value : value;
}

std::string_view withoutSign(std::string_view text, std::string_view sign) {
    text = trimmed(text);
    if (text.starts_with(sign))
        text.remove_prefix(sign.size());
    else if (text.ends_with(sign))
        text.remove_suffix(sign.size());
    return trimmed(text);
}

/// `7:30` or `7h30`; nothing when it is neither. "7:5" could be 7:05 or 7:50.
std::optional<Hours> clockHours(std::string_view text) {
    const std::size_t mark = text.find_first_of(":h");
    if (mark == std::string_view::npos)
        return std::nullopt;
    const auto hours = decimal(text.substr(0, mark), 0);
    const std::string_view rest = text.substr(mark + 1);
    if (rest.size() != 2)
        return std::nullopt;
    const auto minutes = decimal(rest, 0);
    if (!hours || !minutes || *hours < 0 || *minutes < 0 || *minutes > 59 || *hours > 10'000)
        return std::nullopt;
    return Hours::minutes(*hours * 60 + *minutes);
}

} // namespace

Result<Money> parseMoney(std::string_view text) {
    std::string_view plain = trimmed(text);
    const bool negative = plain.starts_with('-');
    if (negative)
        plain.remove_prefix(1);
    const auto cents = decimal(withoutSign(plain, "$"), 2);
    if (!cents || *cents < 0)
        return badInput(inQuotes(text) + " is not an amount of money; write it as 1,234.50.");
    if (*cents > 10'000'000'000)
        return badInput(inQuotes(text) + " is over 100 million.");
    return Money::cents(negative ? -*cents : *cents);
}

Result<UnitPrice> parseUnitPrice(std::string_view text) {
    const auto value = decimal(withoutSign(text, "$"), 4);
    if (!value)
        return badInput(
            inQuotes(text) + " is not a price; write it as 1.25, four decimals at most.");
    if (*value < 0 || *value > 10'000'000'000)
        return badInput(inQuotes(text) + " is not a price between 0 and a million.");
    return UnitPrice::tenThousandths(*value);
}

Result<Percent> parsePercent(std::string_view text) {
    const auto value = decimal(withoutSign(text, "%"), 2);
    if (!value)
        return badInput(inQuotes(text) + " is not a percentage; write it as 12.5.");
    if (*value < -100'000 || *value > 1'000'000)
        return badInput(inQuotes(text) + " is not a sensible percentage.");
    return Percent::basisPoints(*value);
}

Result<Hours> parseHours(std::string_view text) {
    std::string_view plain = trimmed(text);
    if (plain.ends_with("min")) {
        const auto minutes = decimal(trimmed(plain.substr(0, plain.size() - 3)), 0);
        if (minutes && *minutes >= 0 && *minutes <= 600'000)
            return Hours::minutes(*minutes);
    } else if (const auto hours = clockHours(plain)) {
        return *hours;
    } else {
        plain = withoutSign(plain, "h");
        const auto value = decimal(plain, 3);
        if (value && *value >= 0 && *value <= 10'000'000)
            return Hours::minutes(roundedQuotient(Wide(*value) * 60, 1000));
    }
    return badInput(inQuotes(text) + " is not a time worked; write it as 7.5, 7:30 or 45 min.");
}

Result<MinutesPerUnit> parseMinutesPerUnit(std::string_view text) {
    const auto value = decimal(trimmed(text), 2);
    if (!value || *value < 0 || *value > 10'000'000)
        return badInput(inQuotes(text) + " is not a number of minutes; write it as 1.25.");
    return MinutesPerUnit::hundredths(*value);
}

Result<Quantity> parseQuantity(std::string_view text) {
    const auto value = decimal(trimmed(text), 3);
    if (!value)
        return badInput(inQuotes(text) + " is not a quantity; write it as 12 or 12.5.");
    if (*value < 0 || *value > 1'000'000'000)
        return badInput(inQuotes(text) + " is not a quantity between 0 and a million.");
    return Quantity::thousandths(*value);
}

Result<int> parseWhole(std::string_view text, std::string_view what, int low, int high) {
    const auto value = decimal(trimmed(text), 0);
    if (!value || *value < low || *value > high)
        return badInput(inQuotes(text) + " is not a whole number from " + std::to_string(low)
            + " to " + std::to_string(high) + " for " + std::string(what) + ".");
    return static_cast<int>(*value);
}

} // namespace miterbook
