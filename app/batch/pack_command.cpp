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

#include <chrono>

namespace miterbook {

namespace {

void declare(QCommandLineParser& parser) {
    parser.addPositionalArgument(
        QStringLiteral("PIECES.csv"), QStringLiteral("columns length, count, label"));
    parser.addPositionalArgument(QStringLiteral("STICKS.csv"),
        QStringLiteral("columns length, price, have (empty: any number)"));
    addValue(parser, "kerf", "LENGTH", "what one cut takes", "1/8");
    addValue(parser, "trim", "LENGTH", "taken off each stick", "0");
    addValue(parser, "seconds", "S", "how long to look at most", "1");
    addValue(parser, "json", "F", "write the plan to F as JSON");
    addSwitch(parser, "text", "print the plan to be read (this is the default)");
}

template <class Rows>
Result<Rows> readList(
    const std::string& path, Result<Rows> (*read)(std::string_view)) {
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

Result<packing::Problem> problemOf(const QCommandLineParser& parser, const Packed& packed) {
    packing::Problem problem;
    const auto kerf = parseLength(value(parser, "kerf"));
    if (!kerf)
        return badInput("--kerf: " + kerf.error().sentence);
    const auto trim = parseLength(value(parser, "trim"));
    if (!trim)
        return badInput("--trim: " + trim.error().sentence);
    problem.kerf = kerf->nm();
    problem.trim = trim->nm();
    for (const PackStick& stick : packed.sticks)
        problem.sticks.push_back({stick.length.nm(), stick.price.cents(), stick.have});
    for (const PackPiece& piece : packed.pieces)
        problem.pieces.push_back({piece.length.nm(), piece.count});
    return problem;
}

/// "2 pieces, the longest 17'..., come out of none of the sticks."
Error shortageError(const Packed& packed) {
    Length longest;
    std::int64_t count = 0;
    for (const packing::Share& share : packed.solution.plan.missing) {
        longest = std::max(longest, packed.pieces[share.piece].length);
        count += share.count;
    }
    return badInput(std::to_string(count) + (count == 1 ? " piece cannot" : " pieces cannot")
        + " be cut from these sticks; the longest is " + formatLengthWithUnit(longest) + ".");
}

Result<double> secondsOf(const QCommandLineParser& parser) {
    const auto thousandths = parseQuantity(value(parser, "seconds"));
    if (!thousandths || *thousandths <= Quantity() || *thousandths > Quantity::count(3600))
        return badInput("--seconds takes a number over 0 and up to 3600.");
    return thousandths->toDouble();
}

Result<void> pack(Packed& packed, const packing::Problem& problem, double seconds) {
    const auto begin = std::chrono::steady_clock::now();
    packing::Budget budget = secondsFromNow(seconds);
    packed.solution = packing::solve(problem, budget);
    packed.seconds
        = std::chrono::duration<double>(std::chrono::steady_clock::now() - begin).count();
    if (!packed.solution.ok())
        return badInput(packed.solution.error);
    if (!packed.solution.plan.complete())
        return shortageError(packed);
    return {};
}

Result<void> run(const QCommandLineParser& parser, Console& console) {
    if (const auto fewEnough = noMoreThan(parser, 2); !fewEnough)
        return fewEnough;
    auto packed = readLists(parser);
    if (!packed)
        return packed.error();
    const auto problem = problemOf(parser, *packed);
    if (!problem)
        return problem.error();
    const auto seconds = secondsOf(parser);
    if (!seconds)
        return seconds.error();
    if (const auto done = pack(*packed, *problem, *seconds); !done)
        return done;
    if (isSet(parser, "json"))
        return writeOutput(value(parser, "json"), packJson(*packed), console);
    console.out << packText(*packed);
    return {};
}

} // namespace

const Command packCommand{"pack", "cut pieces from sticks at the least cost", declare, run};

} // namespace miterbook
