// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/opening_states.h"
#include "stages/plan/variant_rows.h"
#include "takeoff/takeoff.h"
#include "widgets/table_spec.h"

#include <QTabWidget>

namespace miterbook {

class DataTable;
class Desk;
class TableModelBase;
class TablePanel;

/// The tables of a plan, one tab each: levels, rooms, windows, doors and what else is trimmed.
class PlanTables final : public QTabWidget {
    Q_OBJECT
public:
    explicit PlanTables(Desk& desk, QWidget* parent = nullptr);

    /// Shows another plan, or where changes go to within it.
    void setTarget(const EditTarget& target);
    const EditTarget& target() const { return m_target; }
    /// Says at the head of windows and doors how far each is, by its row's id; empty: nobody has
    /// cut for this plan, and nothing is said.
    void setStates(OpeningStates states);
    /// Makes the row current that a number or remark comes from. False when it has none here.
    bool showSource(const Source& source);
    /// Makes the selected rows of the tab as they are in the base plan.
    void restoreRows();
    /// The table of the tab in view; nullptr on a tab without one.
    DataTable* currentTable() const;

Q_SIGNALS:
    /// The cursor has come to a row.
    void rowChosen(const miterbook::Source& source);

private:
    struct Tab {
        TablePanel* panel = nullptr;
        TableModelBase* model = nullptr;
        std::function<void(EditBuilder&, int)> restore; ///< of the row at a place
    };

    template <Overlaid Row>
    TableSpec<Row> spec(const QString& name, std::span<const Column<Row>> columns);
    template <Overlaid Row>
    void add(TableSpec<Row> spec);
    template <Overlaid Row>
    void setBegin(TableSpec<Row>& spec, std::function<void(Row&, int)> begin);
    const PlanRows& sheet() const;
    QString stateOf(const Opening& opening) const;
    void addPlaces();
    void addOpenings();
    void addFittings();
    bool showKey(int tab, std::int64_t key);

    Desk& m_desk;
    EditTarget m_target;
    OpeningStates m_states;
    std::vector<Tab> m_tabs;
};

} // namespace miterbook
