// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/number.h"

#include <optional>
#include <string>
#include <string_view>

namespace miterbook {

/// A non-negative rational number read from text; denominator positive, both far below 2^63.
struct Ratio {
    std::int64_t numerator = 0;
    std::int64_t denominator = 1;
    bool isFraction = false; ///< written with a slash
};

/// Text with typographic marks made plain: primes to ' and ", vulgar fractions to " 1/2", no-break
/// spaces to spaces, the multiplication sign to x; lower case, ends trimmed.
std::string plainMeasure(std::string_view text);

/// Reads numbers and unit words of a measure, left to right.
class MeasureScanner {
public:
    explicit MeasureScanner(std::string_view text)
        : m_rest(text) {}

    bool atEnd() const { return m_rest.empty(); }
    std::string_view rest() const { return m_rest; }
    void skipSpaces();
    /// A whole, decimal or fraction; nothing (and nothing consumed) when there is none. A zero
    /// denominator comes back as denominator 0; a doubtful comma as nothing.
    std::optional<Ratio> number();
    /// Consumes one of the words, longest first; the scanner stays put when there is none.
    bool take(std::initializer_list<std::string_view> words);

private:
    std::optional<std::int64_t> digits();

    std::string_view m_rest;
};

} // namespace miterbook
