// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/words.h"

namespace miterbook {

/// What is bid, timed, billed and reviewed as one. Every quantity, hour and dollar belongs to one.
enum class PieceOfWork {
    doors,
    windows,
    base,
    crown,
    closets,
    stairs,
    hardware,
    wallTreatment,
    builtIns,
    punch,
    trips,
    extras,
};

template <>
struct Words<PieceOfWork> {
    static constexpr std::array list{
        Word{PieceOfWork::doors, "doors"},
        Word{PieceOfWork::windows, "windows"},
        Word{PieceOfWork::base, "base"},
        Word{PieceOfWork::crown, "crown"},
        Word{PieceOfWork::closets, "closets"},
        Word{PieceOfWork::stairs, "stairs"},
        Word{PieceOfWork::hardware, "hardware"},
        Word{PieceOfWork::wallTreatment, "wall treatment"},
        Word{PieceOfWork::builtIns, "built-ins"},
        Word{PieceOfWork::punch, "punch"},
        Word{PieceOfWork::trips, "trips"},
        Word{PieceOfWork::extras, "extras"},
    };
};

} // namespace miterbook
