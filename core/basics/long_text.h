// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace miterbook {

/// A text that nobody types and that may be long: a frozen paper, a picture in base64.
struct LongText {
    static constexpr std::size_t longest = 2'000'000; // bytes

    std::string text;

    bool operator==(const LongText&) const = default;
};

} // namespace miterbook
