// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace miterbook::packing {

// 128 bits: no product of two 64-bit numbers overflows.
__extension__ typedef __int128 Wide;

} // namespace miterbook::packing
