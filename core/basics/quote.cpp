// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/quote.h"

namespace miterbook {

namespace {

constexpr std::size_t longestQuote = 60;

/// Bytes 10xxxxxx go on with a character that has begun before (UTF-8).
bool continuesCharacter(char c) {
    return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U;
}

} // namespace

std::string inQuotes(std::string_view text) {
    if (text.size() <= longestQuote)
        return '"' + std::string(text) + '"';
    std::size_t end = longestQuote;
    while (end > 0 && continuesCharacter(text[end]))
        --end;
    return '"' + std::string(text.substr(0, end)) + "\u2026\"";
}

std::string capitalised(std::string_view text) {
    std::string result(text);
    if (!result.empty() && result.front() >= 'a' && result.front() <= 'z')
        result.front() = static_cast<char>(result.front() - 'a' + 'A');
    return result;
}

} // namespace miterbook
