// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/safety/reading.h"

namespace miterbook {

/// How another copy of a book stands to it, by their journals, which only ever grow.
enum class Kinship {
    same,     ///< the same edits in both
    ahead,    ///< the other has all of ours and more
    behind,   ///< we have all of the other's and more
    parted,   ///< both have edits that the other lacks
    stranger, ///< no copy of this book at all
};

struct Lineage {
    Kinship kinship = Kinship::stranger;
    std::int64_t ours = 0;   ///< edits that only we have
    std::int64_t theirs = 0; ///< edits that only the other has

    bool operator==(const Lineage&) const = default;
};

Result<Lineage> compareLineage(const BookReading& ours, const BookReading& theirs);

} // namespace miterbook
