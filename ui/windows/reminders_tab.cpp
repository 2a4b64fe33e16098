// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/reminders_tab.h"

#include "bill/bill_checks.h"
#include "desk/desk.h"
#include "widgets/columns.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

#include <algorithm>

namespace miterbook {

namespace {

constexpr Column<Reminder> reminderColumns[] = {
    wordColumn<&Reminder::kind>(QT_TRANSLATE_NOOP("Column", "Kind")),
    textColumn<&Reminder::title>(QT_TRANSLATE_NOOP("Column", "What")),
    dateColumn<&Reminder::due>(QT_TRANSLATE_NOOP("Column", "Due")),
    dateColumn<&Reminder::done>(QT_TRANSLATE_NOOP("Column", "Done")),
    Column<Reminder>{.title = QT_TRANSLATE_NOOP("Column", "Builder"),
        .read =
            [](const Reminder& row, const Book& book) {
                const Builder* builder = book.prices.of<Builder>().find(row.builder);
                return builder ? text(builder->name) : QString();
            }},
    textColumn<&Reminder::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

/// Those still to be done by the day they are due, then those done, the latest first.
std::vector<Reminder> allReminders(const Book& book) {
    std::vector<Reminder> all;
    for (const auto& [id, reminder] : book.jobs.of<Reminder>())
        all.push_back(reminder);
    std::ranges::stable_sort(all, [](const Reminder& a, const Reminder& b) {
        if (a.done.ok() != b.done.ok())
            return b.done.ok();
        return a.done.ok() ? a.done > b.done : a.due < b.due;
    });
    return all;
}

TableModelBase* reminderModel(Desk& desk, QObject* parent) {
    TableSpec<Reminder> spec;
    spec.name = RemindersTab::tr("Reminders");
    spec.columns = reminderColumns;
    spec.rows = [&desk] { return allReminders(desk.book()); };
    spec.blank = [&desk](int) {
        Reminder blank;
        blank.title = utf8(RemindersTab::tr("Reminder"));
        blank.due = desk.clock().today();
        return blank;
    };
    spec.check = checkReminder;
    spec.title = [](const Reminder& row) { return "the reminder " + row.title; };
    spec.emptyHint = RemindersTab::tr(
        "Type what to be reminded of and the day: insurance, licence, "
        "a date that counsel gave you.");
    return new TableModel<Reminder>(desk, std::move(spec), parent);
}

} // namespace

RemindersTab::RemindersTab(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_due(plainLabel({}))
    , m_caution(hintLabel({})) {
    auto* panel = new TablePanel(*reminderModel(desk, this));
    m_table = &panel->table();
    auto* done = new QPushButton(tr("&Done today"));
    connect(done, &QPushButton::clicked, this, &RemindersTab::markDone);
    panel->addBeside(done);
    m_due->setAccessibleDescription(tr("Reminders that are due"));
    m_caution->setText(text(cautionFor(ReminderKind::lienDate)) + QLatin1Char(' ')
        + text(cautionFor(ReminderKind::waiver))
        + tr(" The program knows no deadline of any law: the days are yours."));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_due);
    layout->addWidget(panel, 1);
    layout->addWidget(m_caution);
    connect(&desk, &Desk::changed, this, &RemindersTab::refresh);
    refresh();
}

QString RemindersTab::due() const {
    return m_due->text();
}

void RemindersTab::refresh() {
    const Date today = m_desk.clock().today();
    QStringList lines;
    for (const Reminder& each :
        dueReminders(allReminders(m_desk.book()), today, m_desk.book().billing().remindDays)) {
        const QString day = text(isoDate(each.due)); // as in the table below
        lines << (each.due < today ? tr("PAST DUE since %1: %2") : tr("Due %1: %2"))
                     .arg(day, text(each.title));
    }
    m_due->setText(lines.isEmpty() ? tr("Nothing is due.") : lines.join(QLatin1Char('\n')));
}

void RemindersTab::markDone() {
    const int row = m_table->currentRow();
    const Reminder* held = row < 0
        ? nullptr
        : m_desk.book().jobs.of<Reminder>().find(Id<Reminder>(m_table->cells().keyOfRow(row)));
    if (!held)
        return;
    Reminder done = *held;
    done.done = m_desk.clock().today();
    m_desk.perform(putEdit(m_desk.book(), "Done with the reminder " + done.title, done));
}

} // namespace miterbook
