// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/tables.h"
#include "cut/cut_piece.h"
#include "cut/measure.h"
#include "cut/rack_move.h"
#include "cut/saw_spot.h"
#include "cut/saw_test.h"

namespace miterbook {

/// What hangs on a house's own plan of the day at the saw.
using CutRows = Tables<Measure, CutPiece, SawTest, RackMove, SawSpot>;

} // namespace miterbook
