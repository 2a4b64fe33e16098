// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/week_desk.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "hours/approval.h"
#include "hours/entry_checks.h"

#include <algorithm>

namespace miterbook {

namespace {

std::vector<WeekApproval> approvalsOf(const Book& book) {
    std::vector<WeekApproval> list;
    for (const auto& [id, approval] : book.jobs.of<WeekApproval>())
        list.push_back(approval);
    return list;
}

std::vector<TimeEntry> entriesBetween(const Book& book, Date first, Date last) {
    std::vector<TimeEntry> found;
    for (const auto& [id, entry] : book.time.read()) {
        if (first <= entry.date && entry.date <= last)
            found.push_back(entry);
    }
    return found;
}

TimeEntry under(TimeEntry entry, const WeekKey& key) {
    entry.person = key.person;
    entry.house = key.house;
    entry.work = key.work;
    entry.task = key.task;
    entry.kind = key.kind;
    return entry;
}

} // namespace

WeekDesk::WeekDesk(Desk& desk, FigureDesk& figures, QObject* parent)
    : QObject(parent)
    , m_desk(desk)
    , m_figures(figures) {
    connect(&desk, &Desk::changed, this, &WeekDesk::follow);
    connect(&figures, &FigureDesk::figured, this, &WeekDesk::changed);
    showWeekOf(today());
}

const Book& WeekDesk::book() const {
    return m_desk.book();
}

Date WeekDesk::today() const {
    return m_desk.clock().today();
}

Id<House> WeekDesk::house() const {
    return m_figures.job().house;
}

bool WeekDesk::showWeekOf(Date day) {
    const Date first = weekOf(day, book().payTerms().weekStart);
    if (!m_desk.openDays(first, addDays(first, 6)))
        return false;
    if (first != m_first)
        m_waiting.clear();
    m_first = first;
    Q_EMIT changed();
    return true;
}

void WeekDesk::follow() {
    // Another first day of the week may have been chosen.
    showWeekOf(m_first == noDate ? today() : addDays(m_first, 3));
}

std::vector<TimeEntry> WeekDesk::entries() const {
    return entriesBetween(book(), m_first, last());
}

std::vector<TimeEntry> WeekDesk::behind(const WeekKey& key) const {
    std::vector<TimeEntry> found = entries();
    std::erase_if(found, [&](const TimeEntry& entry) { return keyOf(entry) != key; });
    return found;
}

std::int64_t WeekDesk::placeOf(const WeekKey& key) {
    const auto [it, isNew] = m_places.try_emplace(key, m_lastPlace + 1);
    m_lastPlace += isNew ? 1 : 0;
    return it->second;
}

std::vector<WeekRow> WeekDesk::rows() {
    std::vector<WeekRow> rows;
    const auto approvals = approvalsOf(book());
    const auto add = [&](const WeekLine& line) {
        rows.push_back({line, line.key, placeOf(line.key),
            miterbook::isApproved(approvals, line.key.person, m_first)});
    };
    for (const WeekLine& line : week().lines) {
        m_waiting.erase(line.key);
        add(line);
    }
    for (const WeekKey& key : m_waiting) {
        WeekLine line;
        line.key = key;
        add(line);
    }
    // In the order in which lines came, so that none jumps away under the cursor.
    std::ranges::sort(rows, {}, &WeekRow::place);
    return rows;
}

WeekRow WeekDesk::blank() const {
    WeekRow row;
    row.line.key.house = house();
    const auto lines = week().lines;
    if (!lines.empty()) {
        const auto newest = std::ranges::max_element(lines, {}, [&](const WeekLine& line) {
            const auto it = m_places.find(line.key);
            return it == m_places.end() ? 0 : it->second;
        });
        row.line.key.person = newest->key.person;
        return row;
    }
    for (const auto& [id, person] : book().prices.of<CrewMember>()) {
        if (person.active && !row.line.key.person)
            row.line.key.person = id;
    }
    return row;
}

Result<EntryChange> WeekDesk::changeFor(const WeekRow& row, IdSource& ids) const {
    const WeekKey& key = row.line.key;
    EntryChange all;
    std::vector<TimeEntry> there = behind(row.place != 0 ? row.was : key);
    if (row.place != 0 && key != row.was) {
        for (TimeEntry& entry : there) {
            entry = under(std::move(entry), key);
            all.put.push_back(entry);
        }
        const auto joined = behind(key); // the line may become one with another
        there.insert(there.end(), joined.begin(), joined.end());
        if (!joined.empty())
            return all;
    }
    for (std::size_t day = 0; day < daysOfWeek; ++day) {
        const WeekCell& cell = row.line.days[day];
        auto change = typeCell(
            there, key, addDays(m_first, static_cast<int>(day)), cell.time, cell.done, ids);
        if (!change)
            return change.error();
        all.put.insert(all.put.end(), change->put.begin(), change->put.end());
        all.removed.insert(all.removed.end(), change->removed.begin(), change->removed.end());
    }
    return all;
}

Result<void> WeekDesk::check(const WeekRow& row) const {
    if (!row.line.key.person)
        return badInput("Say who it was; the crew is in the book.");
    IdSource none;
    const auto change = changeFor(row, none);
    if (!change)
        return change.error();
    for (const TimeEntry& entry : change->put) {
        if (auto checked = checkEntry(entry, today()); !checked)
            return checked;
    }
    return {};
}

void WeekDesk::store(EditBuilder& edit, const WeekRow& row) {
    const auto change = changeFor(row, m_desk.ids());
    if (!change) // check() has seen to it
        return;
    for (const TimeEntry& entry : change->put)
        edit.put(entry);
    for (const Id<TimeEntry> id : change->removed)
        edit.remove(id);
    const WeekKey& key = row.line.key;
    if (row.place != 0 && key != row.was) {
        m_waiting.erase(row.was);
        m_places.erase(row.was);
        m_places.try_emplace(key, row.place); // the same line under its new name
    }
    if (change->put.empty() && row.line.time() == Hours()) {
        m_waiting.insert(key);
        Q_EMIT changed();
    }
}

void WeekDesk::remove(EditBuilder& edit, const WeekRow& row) {
    const auto there = behind(row.was);
    for (const TimeEntry& entry : there)
        edit.remove(entry.id);
    if (m_waiting.erase(row.was) > 0 && there.empty())
        Q_EMIT changed();
}

bool WeekDesk::repeatLastWeek() {
    const Date before = addDays(m_first, -7);
    if (!m_desk.openDays(before, addDays(before, 6)))
        return false;
    const Week lastWeek = weekGrid(entriesBetween(book(), before, addDays(before, 6)), before);
    if (lastWeek.lines.empty()) {
        m_desk.refuse(badInput("No time is written down in the week before this one, so there is "
                               "nothing to repeat."));
        return false;
    }
    const std::size_t waiting = m_waiting.size();
    const auto keys = linesToRepeat(lastWeek, week());
    m_waiting.insert(keys.begin(), keys.end());
    if (m_waiting.size() == waiting) {
        m_desk.refuse(badInput("Every line of the week before is here already."));
        return false;
    }
    Q_EMIT changed();
    return true;
}

bool WeekDesk::approve() {
    auto made = approveWeek(
        week(), approvalsOf(book()), today(), book().prices.shop().name, m_desk.ids());
    if (!made) {
        m_desk.refuse(made.error());
        return false;
    }
    EditBuilder edit(book(), "Approve the week of " + isoDate(m_first));
    for (WeekApproval& approval : *made)
        edit.put(std::move(approval));
    return m_desk.perform(edit.take());
}

bool WeekDesk::takeBackApproval() {
    EditBuilder edit(book(), "Take back the approval of the week of " + isoDate(m_first));
    for (const auto& [id, approval] : book().jobs.of<WeekApproval>()) {
        if (m_first <= approval.week && approval.week <= last())
            edit.remove(id);
    }
    return m_desk.perform(edit.take());
}

bool WeekDesk::isApproved() const {
    const auto approvals = approvalsOf(book());
    const auto people = week().people();
    return !people.empty() && std::ranges::all_of(people, [&](Id<CrewMember> person) {
        return miterbook::isApproved(approvals, person, m_first)
            && miterbook::isApproved(approvals, person, last());
    });
}

} // namespace miterbook
