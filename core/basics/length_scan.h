// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/number.h"

#include <cstddef>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace miterbook {

/// A non-negative rational number read from text; both parts are at most 10^18.
struct Ratio {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1; ///< 0 when the text divides by zero
    bool isFraction = false;      ///< written with a slash
    bool isDoubtful = false;      ///< `1,234`: a decimal comma or a thousands mark, nobody knows

    bool isWhole() const { return !isFraction && denominator == 1; }
};

/// Text with typographic marks made plain: primes to ' and ", vulgar fractions to " 1/2", no-break
/// spaces to spaces, dashes to -, the multiplication sign to x; lower case, ends trimmed.
std::string plainMeasure(std::string_view text);

/// Reads numbers and unit words of a plain measure, left to right.
class MeasureScanner {
public:
    explicit MeasureScanner(std::string_view text)
        : m_rest(text) {}

    bool atEnd() const { return m_rest.empty(); }
    std::string_view rest() const { return m_rest; }
    void skipSpaces();
    /// A whole number, a decimal with point or comma, or a fraction; nothing (and nothing consumed)
    /// when there is none.
    std::optional<Ratio> number();
    /// Consumes the first of the words that comes next, so the longer goes before the shorter; the
    /// scanner stays put when there is none.
    bool take(std::initializer_list<std::string_view> words);

private:
    bool startsPart(char mark) const;
    std::optional<std::int64_t> digits(std::size_t most);
    bool readDenominator(Ratio& ratio);
    bool readDecimals(Ratio& ratio);

    std::string_view m_rest;
};

} // namespace miterbook
