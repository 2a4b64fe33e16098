// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/plan_tables.h"

#include "plan/plan_checks.h"
#include "stages/plan/door_columns.h"
#include "stages/plan/fitting_columns.h"
#include "stages/plan/opening_specs.h"
#include "stages/plan/room_columns.h"
#include "stages/plan/window_columns.h"
#include "widgets/data_table.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QApplication>

namespace miterbook {

namespace {

enum TabIndex {
    levelsTab,
    roomsTab,
    windowsTab,
    doorsTab,
    closetsTab,
    stairsTab,
    wallsTab,
    otherTab
};

constexpr int differenceAt = 0; // the column that says what a variant does

} // namespace

PlanTables::PlanTables(Desk& desk, QWidget* parent)
    : QTabWidget(parent)
    , m_desk(desk) {
    setDocumentMode(true);
    setAccessibleName(tr("Tables of the plan"));
    addPlaces();
    addOpenings();
    addFittings();
    setCurrentIndex(windowsTab);
    setTarget({});
}

const PlanRows& PlanTables::sheet() const {
    return m_desk.book().sheet(m_target.plan);
}

template <Overlaid Row>
TableSpec<Row> PlanTables::spec(const QString& name, std::span<const Column<Row>> columns) {
    TableSpec<Row> spec;
    spec.name = name;
    spec.columns = columns;
    spec.rows = [this] { return shownRows(sheet().of<Row>(), m_target.variant); };
    spec.key = rowKey<Row>;
    spec.mark = markOfRow<Row>;
    spec.store = [this](EditBuilder& edit, Row row) {
        storeRow(edit, m_desk.ids(), m_target, std::move(row));
    };
    spec.remove = [this](EditBuilder& edit, const Row& row) {
        removeRow(edit, m_desk.ids(), m_target, row);
    };
    spec.copied = [](Row& row, int) { row.replaces = {}; };
    setBegin<Row>(spec, [](Row&, int) {});
    return spec;
}

/// New rows stand at the end, on the plan's first level, and as `begin` makes them.
template <Overlaid Row>
void PlanTables::setBegin(TableSpec<Row>& spec, std::function<void(Row&, int)> begin) {
    spec.blank = [this, begin = std::move(begin)](int n) {
        Row row;
        row.plan = m_target.plan;
        row.variant = m_target.variant;
        row.position = nextPosition(sheet().of<Row>()) + n;
        if constexpr (requires { row.level; })
            row.level = firstLevel(sheet());
        begin(row, n);
        return row;
    };
}

template <Overlaid Row>
void PlanTables::add(TableSpec<Row> spec) {
    const QString title = spec.name;
    auto* model = new TableModel<Row>(m_desk, std::move(spec), this);
    auto* panel = new TablePanel(*model);
    addTab(panel, title);
    connect(&panel->table(), &DataTable::currentRowChanged, this, [this, panel, model](int row) {
        const QWidget* focus = QApplication::focusWidget();
        if (row < 0 || !focus || !panel->isAncestorOf(focus))
            return;
        Source source;
        if constexpr (std::is_same_v<Row, Level>)
            source.level = Id<Level>(model->keyOfRow(row));
        else
            source.row = Id<Row>(model->keyOfRow(row));
        Q_EMIT rowChosen(source);
    });
    m_tabs.push_back({panel, model,
        [model](EditBuilder& edit, int row) { restoreRow(edit, *model->rowAt(row)); }});
}

void PlanTables::addPlaces() {
    auto levels = spec<Level>(tr("Levels"), levelColumns());
    levels.check = [](const Level& level) { return checkLevel(level, Missing::allowed); };
    levels.emptyHint = tr(
        "Type the levels first: their ceiling heights set the casing legs' room.");
    add(std::move(levels));

    auto rooms = spec<Room>(tr("Rooms"), roomColumns());
    rooms.check = [](const Room& room) { return checkRoom(room, Missing::allowed); };
    rooms.emptyHint = tr("Type the rooms: a name, and the walls in order round the room, 12' x "
                         "14'6 for a rectangle.");
    setBegin<Room>(rooms, [this](Room& room, int n) { room.mark = newRoomMark(sheet(), n); });
    rooms.copied = [this](Room& room, int n) {
        room.replaces = {};
        room.mark = newRoomMark(sheet(), n);
    };
    add(std::move(rooms));
}

void PlanTables::addOpenings() {
    const auto check = [this](const Opening& opening) { return checkTyped(opening, sheet()); };
    const auto complete = [&](TableSpec<Opening>& spec, bool windows) {
        spec.rows = [this, windows] {
            auto rows = shownRows(sheet().of<Opening>(), m_target.variant);
            std::erase_if(rows, [&](const Opening& row) { return row.isWindow() != windows; });
            return rows;
        };
        spec.check = check;
        spec.title = openingTitle;
        spec.head = [this](const Opening& opening) { return stateOf(opening); };
        setBegin<Opening>(spec, [this, windows](Opening& opening, int n) {
            beginOpening(opening, sheet(), windows, n);
        });
        spec.copied = [this](Opening& opening, int n) {
            opening.replaces = {};
            opening.mark = newOpeningMark(sheet(), opening.isWindow(), n);
        };
    };
    auto windows = spec<Opening>(tr("Windows"), windowColumns());
    windows.emptyHint = tr(
        "Type the windows: width and height of the jamb inside, or a size such as "
        "3050 in the width. Or bring in the window schedule (Page menu).");
    complete(windows, true);
    add(std::move(windows));

    auto doors = spec<Opening>(tr("Doors"), doorColumns());
    doors.emptyHint = tr("Type the doors and cased openings: 2-8 and 6-8, or 2868 in the width. Or "
                         "bring in the door schedule (Page menu).");
    complete(doors, false);
    add(std::move(doors));
}

void PlanTables::addFittings() {
    auto closets = spec<Closet>(tr("Closets"), closetColumns());
    closets.check = [](const Closet& row) { return checkCloset(row, Missing::allowed); };
    closets.emptyHint = tr("Type the shelving of closets, pantries and linen cupboards.");
    add(std::move(closets));
    auto stairs = spec<Stair>(tr("Stairs"), stairColumns());
    stairs.check = [](const Stair& row) { return checkStair(row, Missing::allowed); };
    stairs.emptyHint = tr("Type each stair with its skirts, rail, newels and balusters.");
    add(std::move(stairs));
    auto walls = spec<WallTreatment>(tr("Walls"), treatmentColumns());
    walls.check = [](const WallTreatment& row) { return checkTreatment(row, Missing::allowed); };
    walls.emptyHint = tr("Type walls that are covered with boards.");
    add(std::move(walls));
    auto others = spec<OtherWork>(tr("Other work"), otherWorkColumns());
    others.check = [](const OtherWork& row) { return checkOtherWork(row); };
    others.emptyHint = tr("Type what else is counted: mantels, attic accesses, half-wall caps.");
    add(std::move(others));
}

void PlanTables::setTarget(const EditTarget& target) {
    m_target = target;
    for (const Tab& tab : m_tabs) {
        tab.model->refresh();
        tab.panel->table().setColumnHidden(differenceAt, !target.variant);
    }
}

void PlanTables::setStates(OpeningStates states) {
    if (states == m_states)
        return;
    m_states = std::move(states);
    for (const TabIndex tab : {windowsTab, doorsTab})
        m_tabs[tab].model->refresh();
}

QString PlanTables::stateOf(const Opening& opening) const {
    const auto it = m_states.find(opening.id.value());
    if (it == m_states.end())
        return {};
    return text(stateMark(it->second.state)) + QLatin1Char(' ') + text(stateText(it->second));
}

DataTable* PlanTables::currentTable() const {
    const auto index = static_cast<std::size_t>(currentIndex());
    return index < m_tabs.size() ? &m_tabs[index].panel->table() : nullptr;
}

void PlanTables::restoreRows() {
    DataTable* table = currentTable();
    if (!table)
        return;
    EditBuilder edit(m_desk.book(), "Take rows as in the base plan");
    for (const int row : table->selectedRows())
        m_tabs[static_cast<std::size_t>(currentIndex())].restore(edit, row);
    m_desk.perform(edit.take());
}

bool PlanTables::showKey(int tab, std::int64_t key) {
    if (m_tabs[static_cast<std::size_t>(tab)].model->rowOfKey(key) < 0)
        return false;
    setCurrentIndex(tab);
    return m_tabs[static_cast<std::size_t>(tab)].panel->table().showKey(key);
}

bool PlanTables::showSource(const Source& source) {
    return std::visit(
        [&](auto id) {
            using Row = decltype(id);
            if constexpr (std::is_same_v<Row, Id<Plan>>)
                return source.level && showKey(levelsTab, source.level.value());
            else if constexpr (std::is_same_v<Row, Id<Room>>)
                return showKey(roomsTab, id.value());
            else if constexpr (std::is_same_v<Row, Id<Opening>>)
                return showKey(windowsTab, id.value()) || showKey(doorsTab, id.value());
            else if constexpr (std::is_same_v<Row, Id<Closet>>)
                return showKey(closetsTab, id.value());
            else if constexpr (std::is_same_v<Row, Id<Stair>>)
                return showKey(stairsTab, id.value());
            else if constexpr (std::is_same_v<Row, Id<WallTreatment>>)
                return showKey(wallsTab, id.value());
            else
                return showKey(otherTab, id.value());
        },
        source.row);
}

} // namespace miterbook
