// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/pack_output.h"

#include "basics/length_text.h"
#include "basics/number_text.h"

namespace miterbook {

namespace {

std::string piecesJson(const Packed& packed, const packing::Pattern& pattern) {
    std::string list;
    for (const packing::Share& share : pattern.shares) {
        const std::string length = exactInches(packed.pieces[share.piece].length);
        for (std::int64_t i = 0; i < share.count; ++i)
            list += (list.empty() ? "" : ", ") + length;
    }
    return '[' + list + ']';
}

std::string patternJson(const Packed& packed, const packing::Pattern& pattern) {
    const PackStick& stick = packed.sticks[pattern.stick];
    return "{\"length\": " + exactInches(stick.length) + ", \"price\": "
        + std::to_string(stick.price.cents()) + ", \"times\": " + std::to_string(pattern.times)
        + ", \"pieces\": " + piecesJson(packed, pattern) + '}';
}

std::string patternText(const Packed& packed, const packing::Pattern& pattern) {
    const PackStick& stick = packed.sticks[pattern.stick];
    std::string line = std::to_string(pattern.times) + " x " + formatLengthWithUnit(stick.length)
        + " at " + formatMoney(stick.price) + ':';
    for (const packing::Share& share : pattern.shares) {
        line += "  ";
        if (share.count > 1)
            line += std::to_string(share.count) + " of ";
        line += formatLength(packed.pieces[share.piece].length, {LengthUnit::inches, 32});
    }
    return line;
}

std::string shortJson(const Packed& packed) {
    std::string list;
    for (const packing::Share& share : packed.solution.plan.missing)
        list += (list.empty() ? "" : ", ")
            + ("{\"length\": " + exactInches(packed.pieces[share.piece].length)
                + ", \"count\": " + std::to_string(share.count) + '}');
    return list;
}

std::string shortText(const Packed& packed) {
    std::string text;
    for (const packing::Share& share : packed.solution.plan.missing)
        text += "Short: " + std::to_string(share.count) + " of "
            + formatLength(packed.pieces[share.piece].length, {LengthUnit::inches, 32}) + '\n';
    return text;
}

/// The prices of all sticks used.
Money spent(const Packed& packed) {
    Money sum;
    for (const packing::Pattern& pattern : packed.solution.plan.patterns)
        sum += packed.sticks[pattern.stick].price * pattern.times;
    return sum;
}

} // namespace

std::string packJson(const Packed& packed) {
    const packing::Solution& solution = packed.solution;
    const auto microseconds = static_cast<std::int64_t>(packed.seconds * 1e6);
    std::string digits = std::to_string(microseconds % 1'000'000);
    digits.insert(0, 6 - digits.size(), '0');
    const Money cost = Money::cents(solution.plan.cost);
    std::string json = "{\"cost\": " + std::to_string(solution.plan.cost) + ", \"bound\": "
        + std::to_string(solution.bound) + ", \"proven\": " + (solution.proven ? "true" : "false")
        + ", \"seconds\": " + std::to_string(microseconds / 1'000'000) + '.' + digits
        + ", \"salvage\": " + std::to_string((spent(packed) - cost).cents()) + ", \"short\": ["
        + shortJson(packed) + "], \"sticks\": [";
    for (const packing::Pattern& pattern : solution.plan.patterns)
        json += (json.back() == '[' ? "\n  " : ",\n  ") + patternJson(packed, pattern);
    return json + "\n]}\n";
}

std::string packText(const Packed& packed) {
    std::string text;
    for (const packing::Pattern& pattern : packed.solution.plan.patterns)
        text += patternText(packed, pattern) + '\n';
    const Money cost = Money::cents(packed.solution.plan.cost);
    const Money bound = Money::cents(packed.solution.bound);
    text += shortText(packed) + "Cost " + formatMoney(cost);
    if (const Money sticks = spent(packed); sticks != cost)
        text += " (sticks " + formatMoney(sticks) + ", less " + formatMoney(sticks - cost)
            + " for remainders kept)";
    if (!packed.solution.plan.complete())
        return text + " for what can be cut.\n";
    if (packed.solution.proven)
        return text + "; it cannot be cut from cheaper sticks.\n";
    return text + "; within " + formatMoney(cost - bound) + " of the best possible.\n";
}

} // namespace miterbook
