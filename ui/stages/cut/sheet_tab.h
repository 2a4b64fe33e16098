// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/cut_piece.h"

#include <QWidget>

#include <vector>

class QLabel;
class QLineEdit;
class QAction;

namespace miterbook {

class CutDesk;
class FigureView;
struct SheetStop;

/// The saw sheet on the screen: stops, the pieces of the stop under the cursor, and ticks. Space
/// marks what is chosen as cut; a number or mark from the paper can be typed instead.
class SheetTab final : public QWidget {
    Q_OBJECT
public:
    explicit SheetTab(CutDesk& cut, QWidget* parent = nullptr);

    FigureView& stops() const { return *m_stops; }
    FigureView& pieces() const { return *m_pieces; }
    QLineEdit& typed() const { return *m_typed; }

private:
    void refresh();
    void showPieces();
    const SheetStop* currentStop() const;
    /// Of the pieces chosen where the cursor is among them, else of the stops chosen.
    std::vector<std::size_t> chosenPieces() const;
    void tick(PieceState state);
    void tickTyped();
    QAction* action(const QString& words, PieceState state);

    CutDesk& m_cut;
    FigureView* m_stops;
    FigureView* m_pieces;
    QLineEdit* m_typed;
    QLabel* m_done;
    QLabel* m_problems;
};

} // namespace miterbook
