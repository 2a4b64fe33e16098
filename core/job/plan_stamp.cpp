// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/plan_stamp.h"

namespace miterbook {

std::int64_t stampOf(std::string_view text) {
    std::uint64_t hash = 0xcbf29ce484222325U;
    for (const char c : text) {
        hash ^= static_cast<unsigned char>(c);
        hash *= 0x100000001b3U;
    }
    return static_cast<std::int64_t>(hash);
}

} // namespace miterbook
