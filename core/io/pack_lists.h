// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"
#include "basics/money.h"
#include "basics/result.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// Pieces of one length wanted.
struct PackPiece {
    Length length;
    int count = 1;
    std::string label;

    bool operator==(const PackPiece&) const = default;
};

/// Sticks of one length that can be had.
struct PackStick {
    Length length;
    Money price;
    std::optional<int> have; ///< nothing: any number

    bool operator==(const PackStick&) const = default;
};

/// Reads a cut list as CSV: columns length, count, label (which may be missing), in any order.
/// Lengths in any form of the trade, bare numbers inches, up to 100 000 in; up to 50 000 pieces.
/// Errors: one sentence with the line, column and what is wrong.
Result<std::vector<PackPiece>> readPieces(std::string_view bytes);

/// Reads sticks as CSV: columns length, price, have (which may be missing); an empty `have` is any
/// number. Errors as readPieces.
Result<std::vector<PackStick>> readSticks(std::string_view bytes);

} // namespace miterbook
