// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/timer_bar.h"

#include "basics/number_text.h"
#include "desk/desk.h"
#include "io/hours_words.h"
#include "stages/hours/week_columns.h"
#include "stages/hours/week_desk.h"
#include "widgets/plain_text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QTimer>

namespace miterbook {

namespace {

QString ran(std::int64_t seconds) {
    return QStringLiteral("%1:%2:%3")
        .arg(seconds / 3600)
        .arg(seconds / 60 % 60, 2, 10, QLatin1Char('0'))
        .arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

} // namespace

TimerBar::TimerBar(WeekDesk& week, QWidget* parent)
    : QWidget(parent)
    , m_week(week)
    , m_person(new QComboBox)
    , m_what(new QComboBox)
    , m_start(new QPushButton)
    , m_write(new QPushButton(tr("&Write it down")))
    , m_drop(new QPushButton(tr("Throw it away")))
    , m_hours(new QLineEdit)
    , m_state(plainLabel({}))
    , m_tick(new QTimer(this)) {
    m_person->setAccessibleName(tr("Whose timer"));
    m_what->setAccessibleName(tr("What the timer is for"));
    m_what->setEditable(true);
    m_what->addItems(whatChoices(week.book().prices.shop().unit));
    m_hours->setAccessibleName(tr("Hours to write down in place of what the timer ran"));
    m_hours->setPlaceholderText(tr("or hours"));
    m_hours->setMaximumWidth(fontMetrics().averageCharWidth() * 12);
    m_state->setAccessibleDescription(tr("Timer"));
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(new QLabel(tr("Timer")));
    layout->addWidget(m_person);
    layout->addWidget(m_what);
    layout->addWidget(m_start);
    layout->addWidget(m_state, 1);
    layout->addWidget(m_hours);
    layout->addWidget(m_write);
    layout->addWidget(m_drop);
    connect(m_start, &QPushButton::clicked, this, &TimerBar::startOrPause);
    connect(m_write, &QPushButton::clicked, this, &TimerBar::writeDown);
    connect(m_drop, &QPushButton::clicked, this, &TimerBar::throwAway);
    connect(m_person, &QComboBox::activated, this, &TimerBar::refresh);
    connect(&week, &WeekDesk::changed, this, &TimerBar::refresh);
    connect(m_tick, &QTimer::timeout, this, &TimerBar::refresh);
    m_tick->setInterval(1000);
    refresh();
}

Id<CrewMember> TimerBar::person() const {
    return Id<CrewMember>(m_person->currentData().toLongLong());
}

void TimerBar::choosePerson(Id<CrewMember> person) {
    m_person->setCurrentIndex(m_person->findData(qlonglong(person.value())));
    refresh();
}

void TimerBar::chooseWhat(const QString& what) {
    m_what->setEditText(what);
}

QString TimerBar::state() const {
    return m_state->text();
}

const Timer* TimerBar::timer() const {
    for (const auto& [id, timer] : m_week.book().jobs.of<Timer>()) {
        if (timer.person == person())
            return &timer;
    }
    return nullptr;
}

bool TimerBar::put(const std::string& sentence, const Timer& timer) {
    return m_week.desk().perform(putEdit(m_week.book(), sentence, timer));
}

Result<Timer> TimerBar::newTimer() const {
    const auto what = workCalled(utf8(m_what->currentText().trimmed()));
    if (!what)
        return what.error();
    Timer timer;
    timer.id = m_week.desk().ids().next<Timer>();
    timer.person = person();
    timer.house = m_week.house();
    timer.work = what->work;
    timer.task = what->task;
    timer.kind = what->kind;
    timer.day = m_week.today();
    return timer;
}

void TimerBar::startOrPause() {
    const std::string now = m_week.desk().clock().timestamp();
    const Timer* held = timer();
    if (held && held->running()) {
        if (const auto stopped = paused(*held, now))
            put("Stop the timer", *stopped);
        return;
    }
    const auto fresh = held ? Result<Timer>(*held) : newTimer();
    const auto begun = fresh ? resumed(*fresh, now) : fresh;
    if (begun)
        put("Start the timer", *begun);
    else
        m_week.desk().refuse(begun.error());
}

Result<TimeEntry> TimerBar::entryOf(const Timer& timer) const {
    const auto id = m_week.desk().ids().next<TimeEntry>();
    const QString typed = m_hours->text().trimmed();
    if (typed.isEmpty())
        return timedEntry(timer, m_week.desk().clock().timestamp(), id);
    const auto hours = parseHours(utf8(typed));
    if (!hours)
        return hours.error();
    Timer still = timer;
    still.started.clear();
    still.seconds = hours->minutes() * 60;
    return timedEntry(still, {}, id);
}

void TimerBar::writeDown() {
    const Timer* held = timer();
    if (!held)
        return;
    const auto entry = entryOf(*held);
    if (!entry) {
        m_week.desk().refuse(entry.error());
        return;
    }
    EditBuilder edit(m_week.book(), "Write down the timer");
    edit.put(*entry);
    edit.remove(held->id);
    if (m_week.desk().perform(edit.take()))
        m_hours->clear();
}

void TimerBar::throwAway() {
    if (const Timer* held = timer())
        m_week.desk().perform(
            EditBuilder(m_week.book(), "Throw the timer away").remove(held->id).take());
}

/// Whoever has a timer can be chosen to stop it, though no longer in the crew.
bool TimerBar::hasTimer(Id<CrewMember> person) const {
    return std::ranges::any_of(m_week.book().jobs.of<Timer>(),
        [&](const auto& entry) { return entry.second.person == person; });
}

void TimerBar::fillPeople() {
    QStringList names;
    QStringList present;
    for (int i = 0; i < m_person->count(); ++i)
        present << m_person->itemText(i);
    std::vector<Id<CrewMember>> ids;
    for (const auto& [id, member] : m_week.book().prices.of<CrewMember>()) {
        if (member.active || hasTimer(id)) {
            names << text(member.name);
            ids.push_back(id);
        }
    }
    if (names == present)
        return;
    const QSignalBlocker quiet(m_person); // refresh() goes on with whoever is chosen now
    const QVariant chosen = m_person->currentData();
    m_person->clear();
    for (std::size_t i = 0; i < ids.size(); ++i)
        m_person->addItem(names[qsizetype(i)], qlonglong(ids[i].value()));
    m_person->setCurrentIndex(std::max(m_person->findData(chosen), 0));
}

void TimerBar::refresh() {
    fillPeople();
    const Timer* held = timer();
    const bool running = held && held->running();
    m_start->setText(running ? tr("&Pause") : held ? tr("&Go on") : tr("&Start"));
    m_start->setEnabled(static_cast<bool>(person()));
    m_what->setEnabled(!held);
    m_write->setEnabled(held);
    m_drop->setEnabled(held);
    m_hours->setEnabled(held);
    if (running)
        m_tick->start();
    else
        m_tick->stop();
    if (!held) {
        m_state->setText(tr("not running"));
        return;
    }
    const auto seconds = secondsRun(*held, m_week.desk().clock().timestamp());
    m_state->setText(
        tr("%1 at %2, %3 %4")
            .arg(whatText(held->work, held->task, held->kind, m_week.book().prices.shop().unit),
                houseText(held->house, m_week.book()), ran(seconds ? *seconds : 0),
                running ? tr("running") : tr("standing")));
}

} // namespace miterbook
