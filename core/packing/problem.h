// SPDX-License-Identifier: GPL-3.0-or-later
// What is to be cut from what. Lengths are whole numbers of any one unit the caller chooses
// (nanometres will do: common factors are divided out), prices whole cents.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace miterbook::packing {

// A kind of stick that can be had. An offcut on hand is a stick with available set, priced at
// nothing or at what it would be worth if it were kept.
struct Stick {
    std::int64_t length = 0;
    std::int64_t price = 0;                // cents, 0 or more
    std::optional<std::int64_t> available; // nothing: any number
    bool operator==(const Stick&) const = default;
};

// A length wanted, and how many of it.
struct Piece {
    std::int64_t length = 0;
    std::int64_t count = 0;
    bool operator==(const Piece&) const = default;
};

// A remainder of at least shortest is kept and credited cents per perLength, rounded down, but
// never with more than its stick cost.
struct Salvage {
    std::int64_t shortest = 0;
    std::int64_t cents = 0; // 0: nothing is credited
    std::int64_t perLength = 1;
    bool operator==(const Salvage&) const = default;
};

// A stick of length L takes pieces whose sum of (length + kerf) is at most L - trim + kerf:
// a cut lies between two pieces, and the last piece may end flush with the stick.
struct Problem {
    std::vector<Stick> sticks;
    std::vector<Piece> pieces;
    std::int64_t kerf = 0;
    std::int64_t trim = 0; // taken off every stick once, for both ends together
    Salvage salvage;
    bool operator==(const Problem&) const = default;
};

// One sentence on what makes the problem senseless (a negative length, too large a number);
// nothing when it can be worked on. Shortage of sticks is no error.
std::optional<std::string> refusal(const Problem& problem);

} // namespace miterbook::packing
