// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/text_check.h"

#include <array>
#include <cstdint>

namespace miterbook {

namespace {

/// How many bytes follow a first byte, and the least code point that needs so many.
struct Lead {
    unsigned char mask;
    unsigned char bits;
    int following;
    std::uint32_t least;
};

constexpr std::array leads{
    Lead{0xE0, 0xC0, 1, 0x80},
    Lead{0xF0, 0xE0, 2, 0x800},
    Lead{0xF8, 0xF0, 3, 0x10000},
};

bool isPlain(unsigned char byte) {
    return byte == '\n' || byte == '\t' || (byte >= 0x20 && byte < 0x7F);
}

/// The length in bytes of the sound character at the start of `text`; 0 when there is none.
std::size_t soundCharacter(std::string_view text) {
    const auto byteAt = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char first = byteAt(0);
    if (first < 0x80)
        return isPlain(first) ? 1 : 0;
    for (const Lead& lead : leads) {
        if ((first & lead.mask) != lead.bits)
            continue;
        const std::size_t size = 1 + static_cast<std::size_t>(lead.following);
        if (text.size() < size)
            return 0;
        std::uint32_t code = first & static_cast<unsigned char>(~lead.mask);
        for (std::size_t i = 1; i < size; ++i) {
            if ((byteAt(i) & 0xC0) != 0x80)
                return 0;
            code = code << 6 | (byteAt(i) & 0x3FU);
        }
        const bool surrogate = code >= 0xD800 && code <= 0xDFFF;
        const bool control = code < 0xA0; // C1 controls
        return code < lead.least || code > 0x10FFFF || surrogate || control ? 0 : size;
    }
    return 0;
}

} // namespace

bool isSoundText(std::string_view text) {
    while (!text.empty()) {
        const std::size_t size = soundCharacter(text);
        if (size == 0)
            return false;
        text.remove_prefix(size);
    }
    return true;
}

} // namespace miterbook
