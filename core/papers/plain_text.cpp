// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/plain_text.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD";

struct CodePoint {
    char32_t value = 0;
    std::size_t size = 0; ///< bytes; 0: not well formed
};

/// Bytes of a sequence by its first byte; 0 where none begins so.
std::size_t sequenceSize(unsigned char first) {
    if (first < 0x80)
        return 1;
    if (first >= 0xC2 && first < 0xE0)
        return 2;
    if (first >= 0xE0 && first < 0xF0)
        return 3;
    return first >= 0xF0 && first < 0xF5 ? 4 : 0;
}

/// The code point that a text begins with; Unicode 15 table 3-7 says which sequences there are.
CodePoint firstOf(std::string_view text) {
    const auto first = static_cast<unsigned char>(text.front());
    const std::size_t size = sequenceSize(first);
    if (size <= 1)
        return {first, size};
    if (text.size() < size)
        return {};
    char32_t value = first & (0x7FU >> size);
    for (std::size_t i = 1; i < size; ++i) {
        const auto next = static_cast<unsigned char>(text[i]);
        if ((next & 0xC0U) != 0x80U)
            return {};
        value = (value << 6U) | (next & 0x3FU);
    }
    const bool tooLong = (size == 3 && value < 0x800) || (size == 4 && value < 0x10000);
    const bool noCharacter = value > 0x10FFFF || (value >= 0xD800 && value < 0xE000);
    return tooLong || noCharacter ? CodePoint() : CodePoint{value, size};
}

/// Bytes of the first `width` characters of a text.
std::size_t bytesOf(std::string_view text, std::size_t width) {
    std::size_t at = 0;
    while (at < text.size()) {
        const CodePoint point = firstOf(text.substr(at));
        const std::size_t size = std::max<std::size_t>(point.size, 1);
        const bool takesRoom = textWidth(text.substr(at, size)) > 0;
        if (takesRoom && width-- == 0)
            break;
        at += size;
    }
    return at;
}

bool isCombining(char32_t c) {
    return (c >= 0x300 && c < 0x370) || (c >= 0x200B && c < 0x2010) || c == 0xFEFF;
}

/// Breaks off the lines that a word too long for one fills; what is left is a line still open.
std::string_view breakWord(
    std::string_view word, std::size_t width, std::vector<std::string>& lines) {
    while (textWidth(word) > width) {
        const std::size_t bytes = bytesOf(word, width);
        lines.emplace_back(word.substr(0, bytes));
        word.remove_prefix(bytes);
    }
    return word;
}

} // namespace

std::string oneLine(std::string_view text) {
    std::string line(text);
    std::ranges::replace_if(
        line, [](char c) { return static_cast<unsigned char>(c) < 0x20 || c == 0x7F; }, ' ');
    const auto first = line.find_first_not_of(' ');
    if (first == std::string::npos)
        return {};
    return line.substr(first, line.find_last_not_of(' ') - first + 1);
}

std::vector<std::string> typedLines(std::string_view text) {
    std::vector<std::string> lines;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        if (std::string line = oneLine(text.substr(0, end)); !line.empty())
            lines.push_back(std::move(line));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

std::string validUtf8(std::string_view text) {
    std::string result;
    result.reserve(text.size());
    while (!text.empty()) {
        const CodePoint point = firstOf(text);
        result += point.size == 0 ? replacement : text.substr(0, point.size);
        text.remove_prefix(std::max<std::size_t>(point.size, 1));
    }
    return result;
}

std::size_t textWidth(std::string_view text) {
    std::size_t width = 0;
    while (!text.empty()) {
        const CodePoint point = firstOf(text);
        width += isCombining(point.value) ? 0 : 1;
        text.remove_prefix(std::max<std::size_t>(point.size, 1));
    }
    return width;
}

std::vector<std::string> wrapped(std::string_view text, std::size_t width) {
    width = std::max<std::size_t>(width, 1);
    const std::string plain = oneLine(text);
    std::string_view rest = plain;
    std::vector<std::string> lines;
    std::string line;
    while (!rest.empty()) {
        const std::size_t end = std::min(rest.find(' '), rest.size());
        const std::string_view word = rest.substr(0, end);
        rest.remove_prefix(std::min(end + 1, rest.size()));
        if (!line.empty() && textWidth(line) + 1 + textWidth(word) > width) {
            lines.push_back(std::move(line));
            line.clear();
        }
        if (!line.empty())
            line += ' ';
        line += line.empty() ? breakWord(word, width, lines) : word;
    }
    if (!line.empty() || lines.empty())
        lines.push_back(std::move(line));
    return lines;
}

std::string joined(const std::vector<std::string>& texts, std::string_view between) {
    std::string result;
    for (const std::string& text : texts) {
        if (text.empty())
            continue;
        if (!result.empty())
            result += between;
        result += text;
    }
    return result;
}

} // namespace miterbook
