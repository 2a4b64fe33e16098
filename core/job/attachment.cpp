// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/attachment.h"

#include "basics/digits.h"
#include "basics/quote.h"

#include <algorithm>

namespace miterbook {

namespace {

bool isBase64Digit(char c) {
    return (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z') || isDigit(c) || c == '+' || c == '/';
}

/// RFC 4648 section 4, in one line: groups of four, the last one padded.
bool isBase64(std::string_view text) {
    if (text.empty() || text.size() % 4 != 0)
        return false;
    for (int padding = 0; padding < 2 && text.ends_with('='); ++padding)
        text.remove_suffix(1);
    return std::ranges::all_of(text, isBase64Digit);
}

} // namespace

Result<void> checkAttachment(const Attachment& photo) {
    const std::string what = "The picture " + inQuotes(photo.name);
    if (photo.type != "image/jpeg" && photo.type != "image/png")
        return badInput(what + " is neither JPEG nor PNG.");
    if (photo.content.text.size() > Attachment::mostBytes / 3 * 4 + 4)
        return badInput(what + " is over 1 MB, the most that is kept in the book.");
    if (!isBase64(photo.content.text))
        return badInput(what + " did not arrive whole.");
    return {};
}

} // namespace miterbook
