// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_scan.h"

#include <array>
#include <charconv>

namespace miterbook {

namespace {

struct Plain {
    std::string_view mark;
    std::string_view plain;
};

constexpr std::array plainMarks{
    Plain{"\u2032", "'"}, Plain{"\u2019", "'"}, Plain{"\u2018", "'"}, Plain{"\u00b4", "'"},
    Plain{"\u2033", "\""}, Plain{"\u201d", "\""}, Plain{"\u201c", "\""}, Plain{"''", "\""},
    Plain{"\u00a0", " "}, Plain{"\u202f", " "}, Plain{"\u2009", " "}, Plain{"\t", " "},
    Plain{"\u00d7", "x"}, Plain{"\u2044", "/"}, Plain{"\u2013", "-"}, Plain{"\u2212", "-"},
    Plain{"\u00bc", " 1/4"}, Plain{"\u00bd", " 1/2"}, Plain{"\u00be", " 3/4"},
    Plain{"\u215b", " 1/8"}, Plain{"\u215c", " 3/8"}, Plain{"\u215d", " 5/8"},
    Plain{"\u215e", " 7/8"},
};

const Plain* markAt(std::string_view text) {
    for (const Plain& each : plainMarks) {
        if (text.starts_with(each.mark))
            return &each;
    }
    return nullptr;
}

bool isDigit(char c) {
    return c >= '0' && c <= '9';
}

constexpr std::size_t longestNumber = 9; // digits; keeps every product inside 64 bits

} // namespace

std::string plainMeasure(std::string_view text) {
    std::string plain;
    while (!text.empty()) {
        if (const Plain* mark = markAt(text)) {
            plain += mark->plain;
            text.remove_prefix(mark->mark.size());
            continue;
        }
        const char c = text.front();
        plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        text.remove_prefix(1);
    }
    const std::size_t first = plain.find_first_not_of(" \r\n");
    if (first == std::string::npos)
        return {};
    return plain.substr(first, plain.find_last_not_of(" \r\n") - first + 1);
}

void MeasureScanner::skipSpaces() {
    while (!m_rest.empty() && m_rest.front() == ' ')
        m_rest.remove_prefix(1);
}

std::optional<std::int64_t> MeasureScanner::digits() {
    std::size_t count = 0;
    while (count < m_rest.size() && isDigit(m_rest[count]))
        ++count;
    if (count == 0 || count > longestNumber)
        return std::nullopt;
    std::int64_t value = 0;
    std::from_chars(m_rest.data(), m_rest.data() + count, value);
    m_rest.remove_prefix(count);
    return value;
}

std::optional<Ratio> MeasureScanner::number() {
    const std::string_view start = m_rest;
    Ratio ratio;
    if (m_rest.starts_with('.')) {
        ratio.numerator = 0;
    } else if (const auto whole = digits()) {
        ratio.numerator = *whole;
    } else {
        return std::nullopt;
    }
    if (m_rest.size() > 1 && m_rest.front() == '/' && isDigit(m_rest[1])) {
        m_rest.remove_prefix(1);
        const auto below = digits();
        if (!below)
            m_rest = start;
        return below ? std::optional(Ratio{ratio.numerator, *below, true}) : std::nullopt;
    }
    if (m_rest.size() > 1 && (m_rest.front() == '.' || m_rest.front() == ',')
        && isDigit(m_rest[1])) {
        const bool comma = m_rest.front() == ',';
        m_rest.remove_prefix(1);
        const std::size_t before = m_rest.size();
        const auto part = digits();
        const std::size_t places = before - m_rest.size();
        if (!part || (comma && places == 3)) { // "1,234" may mean a thousand
            m_rest = start;
            return std::nullopt;
        }
        for (std::size_t i = 0; i < places; ++i) {
            ratio.numerator *= 10;
            ratio.denominator *= 10;
        }
        ratio.numerator += *part;
    }
    return ratio;
}

bool MeasureScanner::take(std::initializer_list<std::string_view> words) {
    for (const std::string_view word : words) {
        if (m_rest.starts_with(word)) {
            m_rest.remove_prefix(word.size());
            return true;
        }
    }
    return false;
}

} // namespace miterbook
