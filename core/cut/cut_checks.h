// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "cut/bench.h"
#include "cut/cut_piece.h"
#include "cut/measure.h"
#include "cut/rack_move.h"
#include "cut/saw_spot.h"
#include "cut/saw_test.h"

namespace miterbook {

// Whether one row makes sense alone; the Error is one sentence that says what is wrong.

Result<void> checkBench(const Bench& bench);
Result<void> checkMeasure(const Measure& measure);
Result<void> checkCutPiece(const CutPiece& piece);
Result<void> checkRackMove(const RackMove& move);
Result<void> checkSawTest(const SawTest& test);
Result<void> checkSawSpot(const SawSpot& spot);

} // namespace miterbook
