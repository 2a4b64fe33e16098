// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/plan_panel.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "stages/plan/drawing/differences_menu.h"
#include "stages/plan/sheets/sheet_menu.h"
#include "widgets/plain_text.h"

#include <QActionGroup>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QToolBar>
#include <QVBoxLayout>

namespace miterbook {

PlanPanel::PlanPanel(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_view(new PlanView(desk))
    , m_levels(new QComboBox)
    , m_tools(new QToolBar)
    , m_group(new QActionGroup(this))
    , m_menu(new QMenu(this))
    , m_differences(new DifferencesMenu(desk))
    , m_sheets(new PlanSheets(desk, this))
    , m_sheetMenu(new SheetMenu(desk, *m_view, *m_sheets, this))
    , m_kind(new QComboBox)
    , m_typeLabel(new QLabel)
    , m_type(new QLineEdit)
    , m_wallLabel(new QLabel(tr("Walls &inside, outside")))
    , m_walls(new QLineEdit)
    , m_outside(new QLineEdit)
    , m_said(hintLabel({})) {
    makeTools();
    makeMenu();
    auto* top = new QHBoxLayout;
    auto* levelLabel = new QLabel(tr("Le&vel"));
    levelLabel->setBuddy(m_levels);
    m_levels->setAccessibleName(tr("Level on the drawing"));
    m_levels->setSizeAdjustPolicy(QComboBox::AdjustToContents);
    top->addWidget(levelLabel);
    top->addWidget(m_levels);
    top->addWidget(m_differences);
    top->addWidget(m_tools, 1);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->setSpacing(4);
    layout->addLayout(top);
    layout->addWidget(makeTyping());
    layout->addWidget(m_view, 1);
    layout->addWidget(m_said);
    setFocusProxy(m_view);
    connect(m_levels, &QComboBox::activated, this,
        [this] { showLevel(Id<Level>(m_levels->currentData().toLongLong())); });
    connect(&desk, &Desk::changed, this, &PlanPanel::fillLevels);
    connect(&desk, &Desk::changed, this, &PlanPanel::sayWalls);
    connect(m_view, &PlanView::said, m_said, &QLabel::setText);
    connect(m_view, &PlanView::toolChanged, this, &PlanPanel::showOptions);
    connect(m_view, &PlanView::selectionChanged, this, [this] {
        showOptions();
        tellChosen();
    });
    connect(m_view, &PlanView::nameWanted, this, [this] {
        showOptions();
        m_type->setFocus();
        m_type->selectAll();
    });
    connect(m_view, &PlanView::typingBegun, this, [this](const QString& first) {
        m_type->setFocus();
        m_type->setText(first);
    });
    connect(m_sheets, &PlanSheets::changed, this, &PlanPanel::showSheets);
    connect(m_differences, &DifferencesMenu::switched, this, &PlanPanel::seenSwitched);
    connect(m_sheetMenu, &SheetMenu::said, m_said, &QLabel::setText);
    sayWalls();
    showOptions();
}

/// The sheet under the rooms, or why it cannot be seen.
void PlanPanel::showSheets() {
    if (m_sheets->isShown())
        m_view->setUnderlayer([this](QPainter& painter, const ViewFrame& frame) {
            m_sheets->paint(painter, frame, m_view->palette());
        });
    else
        m_view->setUnderlayer({});
    m_view->setSheetBounds(m_sheets->bounds());
    if (const QString trouble = m_sheets->trouble(); !trouble.isEmpty())
        m_said->setText(trouble);
}

void PlanPanel::setTarget(const EditTarget& target) {
    if (target.plan != m_target.plan)
        m_level = {};
    m_target = target;
    fillLevels();
    m_view->setLevel(m_target, m_level);
    m_sheetMenu->setLevel(m_target.plan, m_level);
    setSeen(m_seen);
}

void PlanPanel::setSeen(const std::vector<Id<Variant>>& seen) {
    m_seen = seen;
    m_view->setSeen(seen);
    m_differences->fill(m_target.plan, seen);
    m_differences->setVisible(m_differences->isNeeded());
}

void PlanPanel::fillLevels() {
    const PlanRows& sheet = m_desk.book().sheet(m_target.plan);
    m_levels->clear();
    bool there = false;
    for (const Level& level : shownRows(sheet.of<Level>(), m_target.variant)) {
        if (level.removed)
            continue;
        m_levels->addItem(text(level.name), qlonglong(rowKey(level)));
        there = there || rowKey(level) == m_level.value();
    }
    if (!there)
        showLevel(
            m_levels->count() > 0 ? Id<Level>(m_levels->itemData(0).toLongLong()) : Id<Level>());
    m_levels->setCurrentIndex(m_levels->findData(qlonglong(m_level.value())));
}

void PlanPanel::showLevel(Id<Level> level) {
    m_level = level;
    m_view->setLevel(m_target, level);
    m_sheetMenu->setLevel(m_target.plan, level);
    m_levels->setCurrentIndex(m_levels->findData(qlonglong(level.value())));
    Q_EMIT levelShown();
}

void PlanPanel::addMore(QAction* action) {
    m_menu->addAction(action);
}

void PlanPanel::stepLevel(int by) {
    const int to = m_levels->currentIndex() + by;
    if (to >= 0 && to < m_levels->count())
        showLevel(Id<Level>(m_levels->itemData(to).toLongLong()));
}

} // namespace miterbook
