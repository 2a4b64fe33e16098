// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string_view>

namespace miterbook::fuzz {

/// What a stranger may hand to the program. Each takes any bytes; it ends the program when
/// something does not hold that must hold whatever the bytes are: what was read is written and read
/// again the same, and what is refused is refused with a sentence.
void readLengths(std::string_view bytes);
void readCsvFile(std::string_view bytes);
void readPlan(std::string_view bytes);
/// Bytes of a file, or after a 'P' a script of damage to a sound book: where (three bytes), how
/// much (one), what; again and again.
void openBookFile(std::string_view bytes);

/// One of them by name.
struct Target {
    std::string_view name; ///< also its folder in corpus/
    void (*run)(std::string_view bytes);
};
inline constexpr Target targets[]{
    {"lengths", readLengths}, {"csv", readCsvFile}, {"plans", readPlan}, {"books", openBookFile}};

} // namespace miterbook::fuzz
