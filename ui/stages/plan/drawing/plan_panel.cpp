// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/plan_panel.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "stages/plan/row_names.h"
#include "stages/plan/sheets/sheet_menu.h"
#include "widgets/plain_text.h"

#include <QAction>
#include <QActionGroup>
#include <QApplication>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QMenu>
#include <QToolBar>
#include <QToolButton>
#include <QVBoxLayout>

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
    {PlanTool::tape, QT_TRANSLATE_NOOP("PlanPanel", "Tape"),
        QT_TRANSLATE_NOOP("PlanPanel", "Measure between two points (T)")},
    {PlanTool::saw, QT_TRANSLATE_NOOP("PlanPanel", "Saw"),
        QT_TRANSLATE_NOOP("PlanPanel", "Say where saw and bench stand in this house (M)")},
};

} // namespace

PlanPanel::PlanPanel(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_view(new PlanView(desk))
    , m_levels(new QComboBox)
    , m_tools(new QToolBar)
    , m_group(new QActionGroup(this))
    , m_menu(new QMenu(this))
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
    connect(m_sheetMenu, &SheetMenu::said, m_said, &QLabel::setText);
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
    m_walls->setText(QStringLiteral("4 1/2"));
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

void PlanPanel::setTarget(const EditTarget& target) {
    if (target.plan != m_target.plan)
        m_level = {};
    m_target = target;
    fillLevels();
    m_view->setLevel(m_target, m_level);
    m_sheetMenu->setLevel(m_target.plan, m_level);
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

Id<Level> PlanPanel::levelOf(const Source& source) const {
    const PlanRows& sheet = m_desk.book().sheet(m_target.plan);
    const auto levelOfRoom = [&](Id<Room> id) {
        const Room* room = sheet.of<Room>().find(id);
        return room ? room->level : Id<Level>();
    };
    if (const auto* room = std::get_if<Id<Room>>(&source.row))
        return levelOfRoom(*room);
    if (const auto* opening = std::get_if<Id<Opening>>(&source.row)) {
        const Opening* row = sheet.of<Opening>().find(*opening);
        const Id<Level> level = row ? levelOfRoom(row->room) : Id<Level>();
        return level || !row ? level : row->level;
    }
    if (const auto* work = std::get_if<Id<OtherWork>>(&source.row)) {
        const OtherWork* row = sheet.of<OtherWork>().find(*work);
        return row ? row->level : Id<Level>();
    }
    return source.level;
}

bool PlanPanel::showSource(const Source& source) {
    if (m_telling)
        return true;
    std::optional<DrawnItem> item;
    if (const auto* room = std::get_if<Id<Room>>(&source.row))
        item = {DrawnItem::Kind::room, room->value()};
    else if (const auto* opening = std::get_if<Id<Opening>>(&source.row))
        item = {DrawnItem::Kind::opening, opening->value()};
    else if (const auto* work = std::get_if<Id<OtherWork>>(&source.row))
        item = {DrawnItem::Kind::work, work->value()};
    const Id<Level> level = levelOf(source);
    if (level && level != m_level)
        showLevel(level);
    if (!item)
        return false;
    m_telling = true;
    m_view->show(*item);
    m_telling = false;
    return true;
}

void PlanPanel::tellChosen() {
    if (m_telling || m_view->selection().size() != 1)
        return;
    const DrawnItem& item = *m_view->selection().begin();
    Source source;
    source.level = m_level;
    if (item.kind == DrawnItem::Kind::room)
        source.row = Id<Room>(item.key);
    else if (item.kind == DrawnItem::Kind::opening)
        source.row = Id<Opening>(item.key);
    else
        source.row = Id<OtherWork>(item.key);
    QWidget* const focus = QApplication::focusWidget();
    m_telling = true;
    Q_EMIT chosen(source);
    m_telling = false;
    if (focus && isAncestorOf(focus))
        focus->setFocus(); // the table shows its row, but keys still mean the drawing
}

} // namespace miterbook
