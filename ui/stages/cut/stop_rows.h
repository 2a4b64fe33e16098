// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "figures/figure_model.h"

#include <QStringList>

#include <vector>

namespace miterbook {

class CutDesk;
struct SheetStop;

// The saw sheet as rows of figures, in the order of the level's stops, sticks and sets.

QStringList stopTitles();
std::vector<FigureRow> stopRows(const CutDesk& cut);
QStringList stopPieceTitles();
std::vector<FigureRow> stopPieceRows(const CutDesk& cut, const SheetStop& stop);
QStringList stickTitles();
std::vector<FigureRow> stickRows(const CutDesk& cut);
QStringList setTitles();
std::vector<FigureRow> setRows(const CutDesk& cut);

} // namespace miterbook
