// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// The lines of a text that somebody typed, ends trimmed, empty ones left out.
std::vector<std::string> typedLines(std::string_view text);

/// A text as one line: control characters become spaces, ends are trimmed.
std::string oneLine(std::string_view text);

/// The text with whatever is not well-formed UTF-8 replaced by U+FFFD.
std::string validUtf8(std::string_view text);

/// Characters (code points, combining marks not counted) of a text: its width in a fixed pitch.
std::size_t textWidth(std::string_view text);

/// A text broken between words into lines of at most `width` characters; a longer word is broken
/// anywhere. At least one line, which may be empty.
std::vector<std::string> wrapped(std::string_view text, std::size_t width);

/// "a", "a, b", ...; empty texts are left out.
std::string joined(const std::vector<std::string>& texts, std::string_view between = ", ");

} // namespace miterbook
