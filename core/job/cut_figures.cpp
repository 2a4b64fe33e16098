// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/cut_figures.h"

namespace miterbook {

namespace {

void addTests(CutFigures& figures, const Table<SawTest>& tests) {
    std::vector<TestCut> cuts;
    double corners = 0;
    int count = 0;
    for (const auto& [id, test] : tests) {
        if (test.set > Length() && test.measured > Length())
            cuts.push_back({test.set, test.measured});
        if (test.corner > Angle()) {
            corners += test.corner.toDegrees();
            ++count;
        }
    }
    figures.correction = sawCorrection(cuts);
    if (count > 0)
        figures.corner = corners / count;
}

} // namespace

CutFigures cutFiguresFor(const Book& book, const JobFigures& figures) {
    const SheetRows& rows = book.sheet(figures.whole.plan.id);
    CutFigures cut;
    cut.units = openingUnits(figures.whole, rows.of<Measure>());
    const std::vector<SawPiece> pieces = sawPieces(
        figures.whole, figures.takeoff, book.prices, rows.of<Measure>());
    const std::vector<StickOnHand> sticks = sticksOnHand(
        figures.buy, book.prices, rows.of<RackMove>());
    cut.sheet = sawSheet({figures.whole, book.prices, book.bench(), pieces, sticks,
        rows.of<CutPiece>(), rows.of<RackMove>()});
    addTests(cut, rows.of<SawTest>());
    return cut;
}

BatchSavings savingsOn(const CutFigures& figures, const Bench& bench, Id<Level> level) {
    int pieces = 0;
    int settings = 0;
    int readings = 0;
    for (const SheetStop& stop : figures.sheet.stops) {
        if (level && stop.level != level)
            continue;
        ++settings;
        pieces += static_cast<int>(stop.pieces.size());
    }
    for (const OpeningUnit& unit : figures.units) {
        constexpr int leastReadings = 2; // a width and a height, before anything is entered
        if (!level || unit.opening.level == level)
            readings += unit.isMeasured() ? readingsIn(unit.measure) : leastReadings;
    }
    return batchSavings(
        pieces, settings, readings, bench.stopMove.toDouble(), bench.tapePull.toDouble());
}

} // namespace miterbook
