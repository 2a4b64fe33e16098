// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace miterbook {

/// Whether a text is sound UTF-8 (no overlong forms, no surrogates, nothing past U+10FFFF) without
/// control characters other than line feed and tab: what comes back from a file as it went in.
bool isSoundText(std::string_view text);

} // namespace miterbook
