// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/row_names.h"

#include "basics/steady_order.h"
#include "desk/text.h"
#include "widgets/column_text.h"

#include <algorithm>
#include <charconv>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

template <class Row>
std::vector<const Row*> rowsOf(const Book& book, Id<Plan> plan, Id<Variant> variant) {
    std::vector<const Row*> rows;
    for (const auto& [id, row] : book.sheet(plan).of<Row>()) {
        const bool shown = !row.variant || (row.variant == variant && !row.replaces);
        if (shown && !row.removed)
            rows.push_back(&row);
    }
    sortByPosition(rows);
    return rows;
}

QString roomName(const Room& room) {
    return text(room.name.empty() ? room.mark : room.name);
}

} // namespace

RoomNames::RoomNames(const Book& book, Id<Plan> plan, Id<Variant> variant)
    : m_rooms(rowsOf<Room>(book, plan, variant)) {
    QStringList plain;
    for (const Room* room : m_rooms)
        plain.append(roomName(*room));
    for (qsizetype i = 0; i < plain.size(); ++i) {
        const Room& room = *m_rooms[static_cast<std::size_t>(i)];
        const bool repeats = plain.count(plain[i]) > 1 && !room.mark.empty();
        m_names.append(repeats ? plain[i] + u' ' + text(room.mark) : plain[i]);
    }
}

QStringList RoomNames::names() const {
    return QStringList{QString()} + m_names;
}

QString RoomNames::nameOf(Id<Room> id) const {
    const auto it = std::ranges::find(m_rooms, id, [](const Room* room) { return room->id; });
    return it == m_rooms.end() ? QString() : m_names[it - m_rooms.begin()];
}

Result<Id<Room>> RoomNames::find(const QString& typed) const {
    const QString wanted = typed.trimmed();
    if (wanted.isEmpty())
        return Id<Room>();
    for (const Room* room : m_rooms) {
        if (text(room->mark).compare(wanted, Qt::CaseInsensitive) == 0)
            return room->id;
    }
    const auto at = chosenOf(m_names, wanted);
    if (!at)
        return badInput("The plan has no room \"" + utf8(wanted) + "\".");
    return m_rooms[static_cast<std::size_t>(*at)]->id;
}

LevelNames::LevelNames(const Book& book, Id<Plan> plan, Id<Variant> variant)
    : m_levels(rowsOf<Level>(book, plan, variant)) {
    for (const Level* level : m_levels)
        m_names.append(text(level->name));
}

QString LevelNames::nameOf(Id<Level> id) const {
    const auto it = std::ranges::find(m_levels, id, [](const Level* level) { return level->id; });
    return it == m_levels.end() ? QString() : m_names[it - m_levels.begin()];
}

Result<Id<Level>> LevelNames::find(const QString& typed) const {
    if (typed.trimmed().isEmpty())
        return Id<Level>();
    const auto at = chosenOf(m_names, typed);
    if (!at)
        return badInput("The plan has no level \"" + utf8(typed.trimmed()) + "\".");
    return m_levels[static_cast<std::size_t>(*at)]->id;
}

Id<Level> firstLevel(const PlanRows& rows) {
    const Level* first = nullptr;
    for (const auto& [id, level] : rows.of<Level>()) {
        if (!level.variant && (!first || level.position < first->position))
            first = &level;
    }
    return first ? first->id : Id<Level>();
}

std::string nextMark(const std::vector<std::string>& marks, const std::string& prefix) {
    int highest = 0;
    for (const std::string& mark : marks) {
        if (!mark.starts_with(prefix))
            continue;
        int number = 0;
        const char* const begin = mark.data() + prefix.size();
        const char* const end = mark.data() + mark.size();
        const auto read = std::from_chars(begin, end, number);
        if (read.ec == std::errc() && read.ptr == end)
            highest = std::max(highest, number);
    }
    return prefix + std::to_string(highest + 1);
}

} // namespace miterbook
