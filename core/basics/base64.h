// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace miterbook {

/// Bytes as text of RFC 4648, padded, in one line.
std::string toBase64(std::string_view bytes);
/// The bytes of such a text; nothing for any other.
std::optional<std::string> fromBase64(std::string_view text);

} // namespace miterbook
