// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/any_row.h"

#include <array>
#include <string>
#include <string_view>

namespace miterbook {

/// What an enemy, or a spreadsheet, puts into a name.
inline const std::array<std::string, 12>& hostileTexts() {
    using namespace std::string_literals;
    static const std::array texts{"=HYPERLINK(\"http://example.invalid\",\"pay\")"s,
        "<img src=\"file:///etc/passwd\"><b>bold</b>"s, "+1+cmd|' /C calc'!A0"s, "@SUM(A1:A9)"s,
        "-2+3"s, "\tTab=first"s, "\r\nBEGIN:VEVENT\r\nSUMMARY:forged"s,
        "quote\"comma,semi;colon\\back"s, "\x1b[31mred\x07 bell \x7f\x01"s,
        "\xe2\x80\xae"
        "desrever \xe2\x80\x8b"s,
        "\xff\xfe bytes \xc3"s, "&amp;&#x41;%s%n{{x}}"s};
    return texts;
}

/// A long one, beyond any column.
inline std::string veryLongText() {
    std::string text;
    for (int i = 0; i < 400; ++i)
        text += "endless name " + std::to_string(i) + " ";
    return text;
}

/// Puts a text into every text of a row that people type.
template <class Row>
void poison(Row& row, const std::string& with) {
    forEachField<Row>([&](const auto& field) {
        if constexpr (std::is_same_v<std::remove_cvref_t<decltype(row.*field.member)>, std::string>)
            row.*field.member = with;
    });
}

/// Puts a text into every row of a book that is in memory; a mark keeps its own end, because papers
/// go by marks.
void poison(Book& book, const std::string& with);

} // namespace miterbook
