// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/drawing/plan_view.h"
#include "takeoff/takeoff.h"

#include <QWidget>

class QAction;
class QActionGroup;
class QComboBox;
class QLabel;
class QLineEdit;
class QMenu;
class QToolBar;

namespace miterbook {

class Desk;
class DifferencesMenu;
class PlanSheets;
class SheetMenu;

/// The drawing of a plan's levels with its tools, what can be typed for them, and what they say.
class PlanPanel final : public QWidget {
    Q_OBJECT
public:
    explicit PlanPanel(Desk& desk, QWidget* parent = nullptr);

    void setTarget(const EditTarget& target);
    /// Elevation and options that the plan is looked at with.
    void setSeen(const std::vector<Id<Variant>>& seen);
    DifferencesMenu& differences() const { return *m_differences; }
    PlanView& view() const { return *m_view; }
    SheetMenu& sheetMenu() const { return *m_sheetMenu; }
    /// Selects the row on its level. False when it is not drawn.
    bool showSource(const Source& source);
    /// What else can be done with the drawing, for the page's menu.
    QList<QAction*> actions() const { return m_more; }
    void stepLevel(int by);
    /// Adds to what the drawing's menu offers.
    void addMore(QAction* action);
    Id<Level> level() const { return m_level; }

Q_SIGNALS:
    /// A row was chosen on the drawing.
    void chosen(const miterbook::Source& source);
    void levelShown();
    /// An elevation or option is to be looked at, or no longer.
    void seenSwitched(miterbook::Id<miterbook::Variant> variant, bool on);

private:
    void makeTools();
    void makeMenu();
    QWidget* makeTyping();
    QAction* more(const QString& words, void (PlanView::*slot)());
    void fillLevels();
    void showLevel(Id<Level> level);
    void showOptions();
    void takeTyped();
    void takeKind();
    void takeWalls();
    void sayWalls();
    void tellChosen();
    void showSheets();
    Id<Level> levelOf(const Source& source) const;

    Desk& m_desk;
    EditTarget m_target;
    std::vector<Id<Variant>> m_seen;
    Id<Level> m_level;
    PlanView* m_view;
    QComboBox* m_levels;
    QToolBar* m_tools;
    QActionGroup* m_group;
    QMenu* m_menu;
    DifferencesMenu* m_differences;
    PlanSheets* m_sheets;
    SheetMenu* m_sheetMenu;
    QComboBox* m_kind;
    QLabel* m_typeLabel;
    QLineEdit* m_type;
    QLabel* m_wallLabel;
    QLineEdit* m_walls;
    QLineEdit* m_outside;
    QLabel* m_said;
    QList<QAction*> m_more;
    bool m_telling = false;
};

} // namespace miterbook
