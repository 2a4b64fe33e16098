// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_scan.h"

#include "basics/blank.h"
#include "basics/digits.h"
#include "basics/letters.h"

#include <array>
#include <charconv>

namespace miterbook {

namespace {

struct Plain {
    std::string_view mark;
    std::string_view plain;
};

constexpr std::array plainMarks{
    Plain{"\u2032", "'"},
    Plain{"\u2019", "'"},
    Plain{"\u2018", "'"},
    Plain{"\u00b4", "'"},
    Plain{"\u2033", "\""},
    Plain{"\u201d", "\""},
    Plain{"\u201c", "\""},
    Plain{"''", "\""},
    Plain{"\u00a0", " "},
    Plain{"\u202f", " "},
    Plain{"\u2009", " "},
    Plain{"\u2007", " "},
    Plain{"\t", " "},
    Plain{"\u00d7", "x"},
    Plain{"\u2044", "/"},
    Plain{"\u2010", "-"},
    Plain{"\u2011", "-"},
    Plain{"\u2013", "-"},
    Plain{"\u2212", "-"},
    Plain{"\u00bc", " 1/4"},
    Plain{"\u00bd", " 1/2"},
    Plain{"\u00be", " 3/4"},
    Plain{"\u215b", " 1/8"},
    Plain{"\u215c", " 3/8"},
    Plain{"\u215d", " 5/8"},
    Plain{"\u215e", " 7/8"},
};

const Plain* markAt(std::string_view text) {
    for (const Plain& each : plainMarks) {
        if (text.starts_with(each.mark))
            return &each;
    }
    return nullptr;
}

// Whole digits and decimals together stay below 10^18, inside 64 bits.
constexpr std::size_t mostWholeDigits = 8;
constexpr std::size_t mostDecimals = 10;

} // namespace

std::string plainMeasure(std::string_view text) {
    std::string plain;
    while (!text.empty()) {
        if (const Plain* mark = markAt(text)) {
            plain += mark->plain;
            text.remove_prefix(mark->mark.size());
            continue;
        }
        plain += lowered(text.front());
        text.remove_prefix(1);
    }
    return std::string(trimmed(plain));
}

void MeasureScanner::skipSpaces() {
    while (!m_rest.empty() && m_rest.front() == ' ')
        m_rest.remove_prefix(1);
}

bool MeasureScanner::startsPart(char mark) const {
    return m_rest.size() > 1 && m_rest[0] == mark && isDigit(m_rest[1]);
}

std::optional<std::int64_t> MeasureScanner::digits(std::size_t most) {
    std::size_t count = 0;
    while (count < m_rest.size() && isDigit(m_rest[count]))
        ++count;
    if (count == 0 || count > most)
        return std::nullopt;
    std::int64_t value = 0;
    std::from_chars(m_rest.data(), m_rest.data() + count, value);
    m_rest.remove_prefix(count);
    return value;
}

bool MeasureScanner::readDenominator(Ratio& ratio) {
    m_rest.remove_prefix(1);
    const auto below = digits(mostWholeDigits);
    ratio.denominator = below.value_or(0);
    ratio.isFraction = true;
    return below.has_value();
}

bool MeasureScanner::readDecimals(Ratio& ratio) {
    const bool comma = m_rest.front() == ',';
    m_rest.remove_prefix(1);
    const std::size_t before = m_rest.size();
    const auto part = digits(mostDecimals);
    if (!part)
        return false;
    const std::size_t places = before - m_rest.size();
    // "1,234" may be a thousand and more; "0,902" and "1234,567" cannot.
    ratio.isDoubtful = comma && places == 3 && ratio.numerator > 0 && ratio.numerator < 1000;
    for (std::size_t i = 0; i < places; ++i) {
        ratio.numerator *= 10;
        ratio.denominator *= 10;
    }
    ratio.numerator += *part;
    return true;
}

std::optional<Ratio> MeasureScanner::number() {
    const std::string_view start = m_rest;
    Ratio ratio;
    if (!startsPart('.')) {
        const auto whole = digits(mostWholeDigits);
        if (!whole)
            return std::nullopt;
        ratio.numerator = *whole;
    }
    bool read = true;
    if (startsPart('/'))
        read = readDenominator(ratio);
    else if (startsPart('.') || startsPart(','))
        read = readDecimals(ratio);
    if (read)
        return ratio;
    m_rest = start;
    return std::nullopt;
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
