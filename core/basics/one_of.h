// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <type_traits>

namespace miterbook {

/// Whether T is one of some types.
template <class T, class... Types>
inline constexpr bool isOneOf = (std::is_same_v<T, Types> || ...);

} // namespace miterbook
