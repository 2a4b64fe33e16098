// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

namespace miterbook {

/// Puts a stick as it was typed, with the price that was seen: that in force. Where the stick has
/// dated prices a price typed over it is one more, from `day` on; else it is the stick's own.
void putStick(EditBuilder& edit, IdSource& ids, Stick typed, Date day);

/// Takes a stick away with its dated prices.
void removeStick(EditBuilder& edit, Id<Stick> stick);

} // namespace miterbook
