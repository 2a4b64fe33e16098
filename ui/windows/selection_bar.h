// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QComboBox;
class QLabel;
class QMenu;
class QToolButton;

namespace miterbook {

class Desk;
class FigureDesk;

/// With which elevation and options a plan is looked at: takeoff, bid and order follow. Not shown
/// for a house, which has its own.
class SelectionBar final : public QWidget {
    Q_OBJECT
public:
    SelectionBar(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    void showJob();

private:
    void fillElevations();
    void fillOptions();
    void take();

    Desk& m_desk;
    FigureDesk& m_figures;
    QLabel* m_house;
    QLabel* m_for;
    QComboBox* m_elevation;
    QToolButton* m_options;
    QMenu* m_choices;
    bool m_filling = false;
};

} // namespace miterbook
