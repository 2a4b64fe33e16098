// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/problem.h"

namespace miterbook::packing {

namespace {

// Small enough that no sum over a whole problem leaves 64 bits.
constexpr std::int64_t longest = 5'000'000'000'000; // five kilometres in nanometres
constexpr std::int64_t dearest = 100'000'000'000;   // a thousand million dollars
constexpr std::int64_t mostPieces = 1'000'000;

std::string numbered(const char* what, std::size_t index) {
    return std::string(what) + " " + std::to_string(index + 1);
}

std::optional<std::string> refusalOfStick(const Stick& stick, std::size_t index) {
    if (stick.length < 0 || stick.length > longest)
        return numbered("Stick", index) + " has a length that cannot be used.";
    if (stick.price < 0 || stick.price > dearest)
        return numbered("Stick", index) + " has a price that cannot be used.";
    if (stick.available && *stick.available < 0)
        return numbered("Stick", index) + " is on hand a negative number of times.";
    return std::nullopt;
}

std::optional<std::string> refusalOfPiece(const Piece& piece, std::size_t index) {
    if (piece.length <= 0 || piece.length > longest)
        return numbered("Piece", index) + " has a length that cannot be used.";
    if (piece.count < 0 || piece.count > mostPieces)
        return numbered("Piece", index) + " is wanted a number of times that cannot be used.";
    return std::nullopt;
}

std::optional<std::string> refusalOfRest(const Problem& problem) {
    if (problem.kerf < 0 || problem.kerf > longest)
        return "The kerf cannot be used.";
    if (problem.trim < 0 || problem.trim > longest)
        return "The end trim cannot be used.";
    const Salvage& salvage = problem.salvage;
    if (salvage.shortest < 0 || salvage.cents < 0 || salvage.cents > dearest
        || salvage.perLength <= 0 || salvage.perLength > longest)
        return "The value of remainders cannot be used.";
    return std::nullopt;
}

} // namespace

std::optional<std::string> refusal(const Problem& problem) {
    for (std::size_t i = 0; i < problem.sticks.size(); ++i)
        if (auto sentence = refusalOfStick(problem.sticks[i], i))
            return sentence;
    std::int64_t pieces = 0;
    for (std::size_t i = 0; i < problem.pieces.size(); ++i) {
        if (auto sentence = refusalOfPiece(problem.pieces[i], i))
            return sentence;
        pieces += problem.pieces[i].count;
        if (pieces > mostPieces)
            return "More pieces are wanted than can be planned at once.";
    }
    return refusalOfRest(problem);
}

} // namespace miterbook::packing
