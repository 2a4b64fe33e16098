// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace miterbook {

/// Stop moves and tape pulls of one way of working, and the minutes they take.
struct SetUps {
    int stopMoves = 0;
    int tapePulls = 0;
    double minutes = 0;
};

/// What is compared: cutting every piece as it comes (measured at the opening, the stop or a mark
/// set for it), against a level measured once and every stop set once.
struct BatchSavings {
    SetUps byPiece;
    SetUps byBatch;

    int stopMovesSaved() const { return byPiece.stopMoves - byBatch.stopMoves; }
    int tapePullsSaved() const { return byPiece.tapePulls - byBatch.tapePulls; }
    double minutesSaved() const { return byPiece.minutes - byBatch.minutes; }
};

/// By piece: one stop move and two pulls (at the opening, at the saw) for each piece. By batch: one
/// stop move and one pull for each setting, and the readings taken at the openings. Minutes by the
/// shop's own settings.
BatchSavings batchSavings(
    int pieces, int settings, int readings, double minutesPerStopMove, double minutesPerTapePull);

} // namespace miterbook
