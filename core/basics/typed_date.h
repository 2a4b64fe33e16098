// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"

namespace miterbook {

// A day as people type it: `2026-03-04`, `3/4/2026`, `3/4/26`, `4.3.2026`, `4 Mar 2026`,
// `Mar 4, 2026`, and without a year `3/4` or `4 Mar`. Slashes are month first where the shop writes
// so, points always day first. Error: a sentence for anything else.

/// Without a year the last such day that is not after `today`: for what has been done.
Result<Date> parseTypedDate(std::string_view text, bool monthFirst, Date today);

/// Without a year the such day nearest to `today`, the coming one of two as near: for what may as
/// well be to come. Where `today` is no day a year has to be said.
Result<Date> parseNearDate(std::string_view text, bool monthFirst, Date today);

} // namespace miterbook
