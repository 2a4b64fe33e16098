// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/bench.h"

namespace miterbook {

namespace {

double centsOf(UnitPrice price) {
    return static_cast<double>(price.tenThousandths()) / 100.0;
}

} // namespace

WayOfJoining wayOfJoining(const Bench& bench, JoiningChoice choice) {
    WayOfJoining way;
    if (choice == JoiningChoice::first) {
        way.corner = {bench.firstMakeUp.toDouble(), bench.firstDwell.toDouble(), bench.firstClamps};
        way.fastenerMinutes = bench.firstFastener.toDouble();
        way.centsPerCorner = centsOf(bench.firstCost);
        way.fastenerCents = centsOf(bench.firstFastenerCost);
        way.fastenerOver = bench.firstFastenerOver;
    } else {
        way.corner = {
            bench.secondMakeUp.toDouble(), bench.secondDwell.toDouble(), bench.secondClamps};
        way.fastenerMinutes = bench.secondFastener.toDouble();
        way.centsPerCorner = centsOf(bench.secondCost);
        way.fastenerCents = centsOf(bench.secondFastenerCost);
        way.fastenerOver = bench.secondFastenerOver;
    }
    return way;
}

} // namespace miterbook
