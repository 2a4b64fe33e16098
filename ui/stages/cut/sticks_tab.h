// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QAction;
class QLabel;

namespace miterbook {

class CutDesk;
class FigureView;

/// The sticks of the sheet and what is cut from each; whole sticks are ticked here, and what they
/// have left goes into the rack.
class SticksTab final : public QWidget {
    Q_OBJECT
public:
    explicit SticksTab(CutDesk& cut, QWidget* parent = nullptr);

    FigureView& sticks() const { return *m_sticks; }
    QAction* cutAction() const { return m_cutNow; }
    QAction* putAwayAction() const { return m_putAway; }
    QString told() const;

private:
    void refresh();
    void tick();
    void putAway();

    CutDesk& m_cut;
    FigureView* m_sticks;
    QAction* m_cutNow;
    QAction* m_putAway;
    QLabel* m_told;
};

} // namespace miterbook
