// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/cut_piece.h"

#include <QWidget>

class QLabel;

namespace miterbook {

class CutDesk;
class FigureView;

/// The sets in the order of the bench, what pace it keeps, and ticks for assembled and hung.
class AssemblyTab final : public QWidget {
    Q_OBJECT
public:
    explicit AssemblyTab(CutDesk& cut, QWidget* parent = nullptr);

    FigureView& sets() const { return *m_sets; }
    void tick(PieceState state);

private:
    void refresh();

    CutDesk& m_cut;
    FigureView* m_sets;
    QLabel* m_pace;
};

} // namespace miterbook
