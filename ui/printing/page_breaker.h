// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "printing/page_marks.h"

namespace miterbook {

/// Puts slabs on pages of a height, in order. Slabs that are kept together go to the next page
/// together, unless they are more than a page. A slab higher than a page has one to itself. The
/// pages point into `slabs`, which must outlive them.
std::vector<SetPage> breakPages(const std::vector<Slab>& slabs, double height);

} // namespace miterbook
