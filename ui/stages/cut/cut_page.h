// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QComboBox;
class QLabel;
class QStackedLayout;
class QTabWidget;

namespace miterbook {

class AssemblyTab;
class BenchTab;
class CutDesk;
class Desk;
class FigureDesk;
class MeasuresTab;
class SawCheckTab;
class SheetTab;
class SticksTab;

/// The day at the saw: measures, saw sheet, sticks, assembly, saw check, settings.
class CutPage final : public QWidget {
    Q_OBJECT
public:
    CutPage(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    CutDesk& cut() const { return *m_cut; }
    MeasuresTab& measures() const { return *m_measures; }
    SheetTab& sheet() const { return *m_sheet; }
    SticksTab& sticks() const { return *m_sticks; }
    AssemblyTab& assembly() const { return *m_assembly; }
    SawCheckTab& check() const { return *m_check; }
    BenchTab& bench() const { return *m_bench; }
    QTabWidget& tabs() const { return *m_tabs; }
    QString summary() const;
    QString nextStep() const;

private:
    void refresh();
    void fillLevels();
    void addTabs();

    CutDesk* m_cut;
    QStackedLayout* m_stack;
    QComboBox* m_level;
    QLabel* m_summary;
    QTabWidget* m_tabs;
    MeasuresTab* m_measures;
    SheetTab* m_sheet;
    SticksTab* m_sticks;
    AssemblyTab* m_assembly;
    SawCheckTab* m_check;
    BenchTab* m_bench;
};

} // namespace miterbook
