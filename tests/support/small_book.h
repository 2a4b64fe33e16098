// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"

namespace miterbook {

/// A small book that a carpenter would believe: builder 10, profile 20 with stick 21, plan set 30
/// and plan 31 "Aspen" with option 40, level 41, room 42, windows 43 "W1" and 44 "W2", and 45, by
/// which the option takes W2 away. Its plan is open.
Book smallBook();

} // namespace miterbook
