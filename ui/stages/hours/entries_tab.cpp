// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/entries_tab.h"

#include "desk/desk.h"
#include "hours/entry_checks.h"
#include "stages/hours/week_columns.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QVBoxLayout>

#include <algorithm>

namespace miterbook {

namespace {

TableModelBase* entryModel(WeekDesk& week, QObject* parent) {
    TableSpec<TimeEntry> spec;
    spec.name = EntriesTab::tr("Entries");
    spec.columns = entryColumns();
    spec.rows = [&week] {
        auto entries = week.entries();
        std::ranges::stable_sort(entries, {}, &TimeEntry::date);
        return entries;
    };
    spec.blank = [&week](int) {
        TimeEntry entry;
        entry.date = std::clamp(week.today(), week.first(), week.last());
        entry.person = week.blank().line.key.person;
        entry.house = week.house();
        return entry;
    };
    spec.check = [&week](const TimeEntry& entry) { return checkEntry(entry, week.today()); };
    spec.title = [](const TimeEntry& entry) { return "time of " + isoDate(entry.date); };
    spec.emptyHint = EntriesTab::tr("Nobody's hours are written for this week yet.");
    auto* model = new TableModel<TimeEntry>(week.desk(), std::move(spec), parent);
    QObject::connect(&week, &WeekDesk::changed, model, &TableModelBase::refresh);
    return model;
}

} // namespace

EntriesTab::EntriesTab(WeekDesk& week, QWidget* parent)
    : QWidget(parent)
    , m_panel(new TablePanel(*entryModel(week, this))) {
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_panel);
}

DataTable& EntriesTab::table() const {
    return m_panel->table();
}

} // namespace miterbook
