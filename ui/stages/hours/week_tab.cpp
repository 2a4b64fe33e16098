// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/week_tab.h"

#include "basics/quote.h"
#include "desk/desk.h"
#include "hours/entry_checks.h"
#include "stages/hours/week_columns.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QAction>
#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

namespace miterbook {

namespace {

TableModelBase* weekModel(WeekDesk& week, WeekStart start, QObject* parent) {
    TableSpec<WeekRow> spec;
    spec.name = WeekTab::tr("Week");
    spec.columns = weekColumns(start);
    spec.rows = [&week] { return week.rows(); };
    spec.key = [](const WeekRow& row) { return row.place; };
    spec.blank = [&week](int) { return week.blank(); };
    spec.check = [&week](const WeekRow& row) { return week.check(row); };
    spec.store = [&week](EditBuilder& edit, const WeekRow& row) { week.store(edit, row); };
    spec.remove = [&week](EditBuilder& edit, const WeekRow& row) { week.remove(edit, row); };
    spec.copied = [](WeekRow& row, int) { row.place = 0; };
    spec.title = [&week](const WeekRow& row) {
        return "time of " + utf8(personText(row.line.key.person, week.book()));
    };
    spec.emptyHint = WeekTab::tr("Type who, where and what in the last row, then the hours of each "
                                 "day: 7.5, 7:30, or 7.5 / 6 with six finished.");
    auto* model = new TableModel<WeekRow>(week.desk(), std::move(spec), parent);
    QObject::connect(&week, &WeekDesk::changed, model, &TableModelBase::refresh);
    return model;
}

PersonNames namesIn(const Book& book) {
    PersonNames names;
    for (const auto& [id, person] : book.prices.of<CrewMember>())
        names.emplace_back(id, person.name);
    return names;
}

} // namespace

WeekTab::WeekTab(WeekDesk& week, QWidget* parent)
    : QWidget(parent)
    , m_week(week)
    , m_layout(new QVBoxLayout(this))
    , m_title(headLabel({}))
    , m_remarks(plainLabel({}))
    , m_start(week.book().payTerms().weekStart) {
    makeActions();
    m_remarks->setAccessibleName(tr("What to look at in this week"));
    auto* top = new QHBoxLayout;
    m_title->setWordWrap(false);
    top->addWidget(m_title);
    top->addStretch(1);
    for (QAction* action : m_actions) {
        auto* button = new QToolButton;
        button->setDefaultAction(action);
        button->setToolButtonStyle(Qt::ToolButtonTextOnly);
        top->addWidget(button);
    }
    m_layout->addLayout(top);
    m_layout->addWidget(m_remarks);
    makeTable();
    connect(&week, &WeekDesk::changed, this, &WeekTab::refresh);
    refresh();
}

DataTable& WeekTab::table() const {
    return m_panel->table();
}

QString WeekTab::remarks() const {
    return m_remarks->text();
}

QAction* WeekTab::action(const QString& words, void (WeekTab::*slot)()) {
    auto* action = new QAction(words, this);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, this, slot);
    addAction(action);
    m_actions << action;
    return action;
}

void WeekTab::makeActions() {
    action(tr("Week before"), &WeekTab::before)
        ->setShortcut(QKeySequence(Qt::ALT | Qt::Key_PageUp));
    action(tr("This week"), &WeekTab::thisWeek);
    action(tr("Week after"), &WeekTab::after)
        ->setShortcut(QKeySequence(Qt::ALT | Qt::Key_PageDown));
    action(tr("Repeat last week's lines"), &WeekTab::repeat);
    m_approve = action(tr("Approve the week"), &WeekTab::approve);
}

void WeekTab::makeTable() {
    if (m_panel) {
        m_panel->hide();
        m_panel->deleteLater(); // it may be its own model that says the week has changed
    }
    m_start = m_week.book().payTerms().weekStart;
    TableModelBase* model = weekModel(m_week, m_start, this);
    m_panel = new TablePanel(*model);
    model->setParent(m_panel);
    m_layout->insertWidget(1, m_panel, 1);
}

void WeekTab::refresh() {
    if (m_week.book().payTerms().weekStart != m_start)
        makeTable();
    const bool monthFirst = m_week.book().prices.shop().monthFirst;
    m_title->setText(tr("%1 to %2")
                         .arg(text(formatDate(m_week.first(), monthFirst)),
                             text(formatDate(m_week.last(), monthFirst))));
    m_title->setAccessibleName(tr("Week of %1").arg(m_title->text()));
    QStringList said;
    for (const Doubt& doubt : doubtsAbout(m_week.entries(), namesIn(m_week.book())))
        said << text(doubt.sentence);
    if (m_week.isApproved())
        said << tr("This week is approved: its hours do not change any more.");
    m_remarks->setText(said.join(u' '));
    m_remarks->setVisible(!said.isEmpty());
    m_approve->setText(m_week.isApproved() ? tr("Take back the approval") : tr("Approve the week"));
}

void WeekTab::before() {
    m_week.showWeekOf(addDays(m_week.first(), -7));
}

void WeekTab::after() {
    m_week.showWeekOf(addDays(m_week.first(), 7));
}

void WeekTab::thisWeek() {
    m_week.showWeekOf(m_week.today());
}

void WeekTab::repeat() {
    m_week.repeatLastWeek(); // the desk has said why where there is none
}

void WeekTab::approve() {
    if (m_week.isApproved())
        m_week.takeBackApproval();
    else
        m_week.approve();
}

} // namespace miterbook
