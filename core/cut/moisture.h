// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length.h"
#include "basics/words.h"

namespace miterbook {

/// Woods that trim is made of, for how they move.
enum class Wood {
    whitePine,
    ponderosaPine,
    whiteFir,
    douglasFir,
    poplar,
    redAlder,
    redOak,
    whiteOak,
    hardMaple,
    redMaple,
    cherry,
    walnut,
};

template <>
struct Words<Wood> {
    static constexpr std::array list{
        Word{Wood::whitePine, "eastern white pine"},
        Word{Wood::ponderosaPine, "ponderosa pine"},
        Word{Wood::whiteFir, "white fir"},
        Word{Wood::douglasFir, "Douglas-fir"},
        Word{Wood::poplar, "yellow-poplar"},
        Word{Wood::redAlder, "red alder"},
        Word{Wood::redOak, "red oak"},
        Word{Wood::whiteOak, "white oak"},
        Word{Wood::hardMaple, "sugar maple"},
        Word{Wood::redMaple, "red maple"},
        Word{Wood::cherry, "black cherry"},
        Word{Wood::walnut, "black walnut"},
    };
};

/// How the growth rings lie in the face: flat grain moves tangentially and most.
enum class Grain { flat, edge };

template <>
struct Words<Grain> {
    static constexpr std::array list{
        Word{Grain::flat, "flat grain"}, Word{Grain::edge, "edge grain"}};
};

/// The moisture, in percent of dry weight, at which wood comes to rest in air of so many degrees
/// Fahrenheit and relative humidity from 0 to 1. Wood Handbook, FPL-GTR-282 (2021), equation 4-5.
double equilibriumMoisture(double fahrenheit, double humidity);

/// Change of width per percent of moisture, of the present width. Wood Handbook, FPL-GTR-190
/// (2010), table 13-5.
double changeCoefficient(Wood wood, Grain grain);

/// The same from the shrinkage from green to oven-dry in percent: (S / 30) / (100 - 20 S / 30).
double coefficientFromShrinkage(double percent);

/// How much wider (negative: narrower) a face gets between two moistures in percent: D C (M2 - M1).
/// Good from 6 to 14 percent.
Length widthChange(Length width, double coefficient, double fromMoisture, double toMoisture);

/// Which end of a miter opens.
enum class MiterEnd { none, heel, toe };

/// What a change of moisture does to a mitered corner that was tight: the heel (inside) opens where
/// the wood dries, the toe (outside) where it swells, by C dM c sqrt 2 [calc].
struct MiterChange {
    Length gap;
    MiterEnd opens = MiterEnd::none;
};
MiterChange miterChange(
    Length faceWidth, double coefficient, double fromMoisture, double toMoisture);

} // namespace miterbook
