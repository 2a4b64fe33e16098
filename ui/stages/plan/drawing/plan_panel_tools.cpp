// SPDX-License-Identifier: GPL-3.0-or-later
// The tools of the drawing, its menu and the line to type into.
#include "stages/plan/drawing/plan_panel.h"
#include "stages/plan/sheets/sheet_menu.h"

#include <QAction>
#include <QActionGroup>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QToolBar>
#include <QToolButton>

namespace miterbook {

namespace {

struct ToolName {
    PlanTool tool;
    const char* words;
    const char* tip;
};

constexpr ToolName toolNames[] = {
    {PlanTool::choose, QT_TRANSLATE_NOOP("PlanPanel", "Choose"),
        QT_TRANSLATE_NOOP("PlanPanel", "Choose, move and resize (V)")},
    {PlanTool::rectangle, QT_TRANSLATE_NOOP("PlanPanel", "Room"),
        QT_TRANSLATE_NOOP("PlanPanel", "Draw a room from corner to corner (R)")},
    {PlanTool::polygon, QT_TRANSLATE_NOOP("PlanPanel", "Room by corners"),
        QT_TRANSLATE_NOOP("PlanPanel", "Draw a room of any shape, corner by corner (P)")},
    {PlanTool::window, QT_TRANSLATE_NOOP("PlanPanel", "Window"),
        QT_TRANSLATE_NOOP("PlanPanel", "Place windows on walls (W)")},
    {PlanTool::door, QT_TRANSLATE_NOOP("PlanPanel", "Door"),
        QT_TRANSLATE_NOOP("PlanPanel", "Place doors and cased openings on walls (D)")},
    {PlanTool::standing, QT_TRANSLATE_NOOP("PlanPanel", "Against a wall"),
        QT_TRANSLATE_NOOP("PlanPanel", "Cabinets, tubs and the like: no base there (C)")},
    {PlanTool::count, QT_TRANSLATE_NOOP("PlanPanel", "Count"),
        QT_TRANSLATE_NOOP("PlanPanel", "Count things by a click on each (N)")},
    {PlanTool::run, QT_TRANSLATE_NOOP("PlanPanel", "Run"),
        QT_TRANSLATE_NOOP("PlanPanel", "Measure a run of other work (L)")},
    {PlanTool::area, QT_TRANSLATE_NOOP("PlanPanel", "Area"),
        QT_TRANSLATE_NOOP("PlanPanel", "Measure an area of other work (A)")},
    {PlanTool::stair, QT_TRANSLATE_NOOP("PlanPanel", "Stair"),
        QT_TRANSLATE_NOOP("PlanPanel", "Draw a stair, bottom to top (U)")},
    {PlanTool::tape, QT_TRANSLATE_NOOP("PlanPanel", "Tape"),
        QT_TRANSLATE_NOOP("PlanPanel", "Measure between two points (T)")},
    {PlanTool::saw, QT_TRANSLATE_NOOP("PlanPanel", "Saw"),
        QT_TRANSLATE_NOOP("PlanPanel", "Say where saw and bench stand in this house (M)")},
};

} // namespace

void PlanPanel::makeTools() {
    m_tools->setToolButtonStyle(Qt::ToolButtonTextOnly);
    m_tools->setAccessibleName(tr("Tools of the drawing"));
    for (const ToolName& each : toolNames) {
        QAction* action = m_tools->addAction(tr(each.words));
        action->setCheckable(true);
        action->setToolTip(tr(each.tip));
        action->setData(static_cast<int>(each.tool));
        m_group->addAction(action);
        connect(action, &QAction::triggered, this, [this, tool = each.tool] {
            m_view->setTool(tool);
            m_view->setFocus();
        });
    }
}

QAction* PlanPanel::more(const QString& words, void (PlanView::*slot)()) {
    auto* action = new QAction(words, this);
    connect(action, &QAction::triggered, m_view, slot);
    m_menu->addAction(action);
    m_more.append(action);
    return action;
}

void PlanPanel::makeMenu() {
    more(tr("&Copy what is chosen"), &PlanView::copyChosen)
        ->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_D));
    more(tr("&Take what is chosen away"), &PlanView::removeChosen);
    more(tr("Take away what stands &against the walls"), &PlanView::clearStanding);
    m_menu->addSeparator();
    more(tr("&Put typed rooms on the drawing"), &PlanView::layOutTyped);
    more(tr("&Repeat this level above"), &PlanView::repeatLevel);
    more(tr("&Mirror the plan left for right"), &PlanView::mirrorPlan);
    m_menu->addMenu(m_sheetMenu);
    m_menu->addSeparator();
    QAction* lengths = m_menu->addAction(tr("Show the &lengths of all walls"));
    lengths->setCheckable(true);
    connect(lengths, &QAction::toggled, m_view, &PlanView::setShowLengths);
    QAction* whole = m_menu->addAction(tr("Show the &whole level"));
    connect(whole, &QAction::triggered, m_view, &PlanView::fitAll);
    m_more.first()->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    m_view->addAction(m_more.first());
    auto* button = new QToolButton;
    button->setText(tr("&More"));
    button->setAccessibleName(tr("More for the drawing"));
    button->setMenu(m_menu);
    button->setPopupMode(QToolButton::InstantPopup);
    m_tools->addSeparator();
    m_tools->addWidget(button);
}

QWidget* PlanPanel::makeTyping() {
    auto* row = new QWidget;
    auto* layout = new QHBoxLayout(row);
    layout->setContentsMargins(0, 0, 0, 0);
    m_kind->setAccessibleName(tr("Kind of what is placed"));
    m_typeLabel->setBuddy(m_type);
    m_type->setAccessibleName(tr("Typed for the drawing"));
    m_type->setMinimumWidth(180);
    m_wallLabel->setBuddy(m_walls);
    for (QLineEdit* line : {m_walls, m_outside})
        line->setMaximumWidth(80);
    m_walls->setAccessibleName(tr("Thickness of inside walls"));
    m_outside->setAccessibleName(tr("Thickness of outside walls"));
    layout->addWidget(m_kind);
    layout->addWidget(m_typeLabel);
    layout->addWidget(m_type, 1);
    layout->addWidget(m_wallLabel);
    layout->addWidget(m_walls);
    layout->addWidget(m_outside);
    connect(m_type, &QLineEdit::returnPressed, this, &PlanPanel::takeTyped);
    connect(m_kind, &QComboBox::activated, this, &PlanPanel::takeKind);
    connect(m_walls, &QLineEdit::editingFinished, this, &PlanPanel::takeWalls);
    connect(m_outside, &QLineEdit::editingFinished, this, &PlanPanel::takeWalls);
    return row;
}

} // namespace miterbook
