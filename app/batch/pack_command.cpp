// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/length_text.h"
#include "basics/number_text.h"
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/output_file.h"
#include "batch/pack_output.h"
#include "batch/time_limit.h"
#include "io/file_bytes.h"
#include "packing/solve.h"

namespace miterbook {

namespace {

void declarePack(QCommandLineParser& parser) {
    parser.addPositionalArgument(
        QStringLiteral("PIECES.csv"), QStringLiteral("columns length, count, label"));
    parser.addPositionalArgument(QStringLiteral("STICKS.csv"),
        QStringLiteral("columns length, price, have (empty: any number)"));
    addValue(parser, "kerf", "LENGTH", "what one cut takes", "1/8");
    addValue(parser, "trim", "LENGTH", "taken off each stick", "0");
    addValue(parser, "salvage", "MONEY", "what a foot of remainder is worth when kept", "0");
    addValue(parser, "shortest", "LENGTH", "the shortest remainder worth keeping", "0");
    addValue(parser, "seconds", "S", "how long all of it may take", "1");
    addValue(parser, "json", "F", "write the plan to F as JSON");
    addSwitch(parser, "text", "print the plan to be read (this is the default)");
}

template <class Rows>
Result<Rows> readList(const std::string& path, Result<Rows> (*read)(std::string_view)) {
    const auto bytes = readFileBytes(path);
    if (!bytes)
        return bytes.error();
    auto rows = read(*bytes);
    return rows ? std::move(rows) : badInput(fileName(path) + ": " + rows.error().sentence);
}

Result<Packed> readLists(const QCommandLineParser& parser) {
    const auto piecesPath = positional(parser, 0, "which pieces to cut");
    if (!piecesPath)
        return piecesPath.error();
    const auto sticksPath = positional(parser, 1, "which sticks to cut them from");
    if (!sticksPath)
        return sticksPath.error();
    Packed packed;
    auto pieces = readList<std::vector<PackPiece>>(*piecesPath, readPieces);
    if (!pieces)
        return pieces.error();
    auto sticks = readList<std::vector<PackStick>>(*sticksPath, readSticks);
    if (!sticks)
        return sticks.error();
    packed.pieces = std::move(*pieces);
    packed.sticks = std::move(*sticks);
    return packed;
}

Result<Length> lengthOf(const QCommandLineParser& parser, const char* option) {
    const auto length = parseLength(value(parser, option));
    if (!length)
        return badInput("--" + std::string(option) + ": " + length.error().sentence);
    return *length;
}

Result<packing::Salvage> salvageOf(const QCommandLineParser& parser) {
    const auto worth = parseMoney(value(parser, "salvage"));
    if (!worth || *worth < Money())
        return badInput("--salvage takes an amount of money of 0 or more.");
    const auto shortest = lengthOf(parser, "shortest");
    if (!shortest)
        return shortest.error();
    return packing::Salvage{shortest->nm(), worth->cents(), Length::feet(1).nm()};
}

Result<packing::Problem> problemOf(const QCommandLineParser& parser, const Packed& packed) {
    packing::Problem problem;
    const auto kerf = lengthOf(parser, "kerf");
    if (!kerf)
        return kerf.error();
    const auto trim = lengthOf(parser, "trim");
    if (!trim)
        return trim.error();
    const auto salvage = salvageOf(parser);
    if (!salvage)
        return salvage.error();
    problem.kerf = kerf->nm();
    problem.trim = trim->nm();
    problem.salvage = *salvage;
    for (const PackStick& stick : packed.sticks)
        problem.sticks.push_back({stick.length.nm(), stick.price.cents(), stick.have});
    for (const PackPiece& piece : packed.pieces)
        problem.pieces.push_back({piece.length.nm(), piece.count});
    return problem;
}

/// "2 pieces cannot be cut from these sticks: 34' in all, the longest 17'."
Error shortageError(const Packed& packed) {
    constexpr LengthStyle feet{LengthUnit::feetInches, 32};
    Length longest;
    Length sum;
    std::int64_t count = 0;
    for (const packing::Share& share : packed.solution.plan.missing) {
        const Length length = packed.pieces[share.piece].length;
        longest = std::max(longest, length);
        sum += length * share.count;
        count += share.count;
    }
    return badInput(std::to_string(count) + (count == 1 ? " piece cannot" : " pieces cannot")
        + " be cut from these sticks: " + formatLengthWithUnit(sum, feet) + " in all, the longest "
        + formatLengthWithUnit(longest, feet) + ".");
}

Result<double> secondsOf(const QCommandLineParser& parser) {
    const auto thousandths = parseQuantity(value(parser, "seconds"));
    if (!thousandths || *thousandths <= Quantity() || *thousandths > Quantity::count(3600))
        return badInput("--seconds takes a number over 0 and up to 3600.");
    return thousandths->toDouble();
}

/// What it takes to end the search, write the plan and leave; twice what was measured.
double timeToWrite(const Packed& packed) {
    std::int64_t pieces = 0;
    for (const PackPiece& piece : packed.pieces)
        pieces += piece.count;
    return 0.04 + 3e-6 * static_cast<double>(pieces);
}

Result<void> write(const QCommandLineParser& parser, const Packed& packed, Console& console) {
    if (isSet(parser, "json"))
        return writeOutput(value(parser, "json"), packJson(packed), console);
    console.out << packText(packed);
    return {};
}

Result<void> runPack(const QCommandLineParser& parser, Console& console) {
    const auto seconds = secondsOf(parser);
    if (!seconds)
        return seconds.error();
    const TimeLimit limit(*seconds);
    if (const auto fewEnough = noMoreThan(parser, 2); !fewEnough)
        return fewEnough;
    auto packed = readLists(parser);
    if (!packed)
        return packed.error();
    const auto problem = problemOf(parser, *packed);
    if (!problem)
        return problem.error();
    packing::Budget budget = limit.budgetBefore(timeToWrite(*packed));
    packed->solution = packing::solve(*problem, budget);
    packed->seconds = limit.passed();
    if (!packed->solution.ok())
        return badInput(packed->solution.error);
    if (const auto written = write(parser, *packed, console); !written)
        return written;
    if (!packed->solution.plan.complete())
        return shortageError(*packed);
    return {};
}

} // namespace

const Command packCommand{"pack", "cut pieces from sticks at the least cost", declarePack, runPack};

} // namespace miterbook
