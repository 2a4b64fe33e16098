// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/schedule_edit.h"

#include "io/decoded_text.h"

#include <algorithm>

namespace miterbook {

namespace {

/// The position after the last of a plan's own rows of one kind.
template <class Row>
int nextPosition(const PlanRows& rows) {
    int last = 0;
    for (const auto& [id, row] : rows.of<Row>()) {
        if (!row.variant)
            last = std::max(last, row.position);
    }
    return last + 1;
}

/// Gives new rows their ids, plan and places, and puts them into one edit.
class Adding {
public:
    Adding(const Book& book, IdSource& ids, Id<Plan> plan, std::string sentence)
        : m_rows(book.sheet(plan))
        , m_ids(ids)
        , m_plan(plan)
        , m_edit(book, std::move(sentence)) {}

    template <class Row>
    Id<Row> add(Row row, int& position) {
        row.id = m_ids.next<Row>();
        row.plan = m_plan;
        row.position = position++;
        const Id<Row> id = row.id;
        m_edit.put(std::move(row));
        return id;
    }

    void add(const ScheduleRow& row) {
        if (row.opening)
            add(*row.opening, m_opening);
        if (!row.room)
            return;
        const Id<Room> room = add(*row.room, m_room);
        if (row.closet) {
            Closet closet = *row.closet;
            closet.room = room;
            add(std::move(closet), m_closet);
        }
    }

    EditBuilder& edit() { return m_edit; }

private:
    const PlanRows& m_rows;
    IdSource& m_ids;
    Id<Plan> m_plan;
    EditBuilder m_edit;
    int m_opening = nextPosition<Opening>(m_rows);
    int m_room = nextPosition<Room>(m_rows);
    int m_closet = nextPosition<Closet>(m_rows);
};

std::string spokenCount(const ScheduleReading& reading) {
    int count = 0;
    for (const ScheduleRow& row : reading.rows)
        count += row.opening ? row.opening->count : 1;
    std::string noun(word(reading.kind));
    if (count == 1)
        noun.pop_back();
    return std::to_string(count) + " " + noun;
}

/// One HeaderName for each choice, over an earlier one for the same header.
void rememberChoices(
    EditBuilder& edit, const Book& book, IdSource& ids, const ScheduleReading& reading) {
    for (const HeaderChoice& choice : reading.choices) {
        HeaderName name;
        name.schedule = word(reading.kind);
        name.header = foldedText(choice.header);
        for (const auto& [id, each] : book.prices.of<HeaderName>()) {
            if (each.schedule == name.schedule && each.header == name.header)
                name.id = id;
        }
        if (!name.id)
            name.id = ids.next<HeaderName>();
        name.column = choice.field ? word(*choice.field) : std::string_view();
        edit.put(std::move(name));
    }
}

bool isUpper(std::string_view name) {
    static constexpr std::array words{"upper", "second", "2nd", "third", "3rd", "attic", "loft"};
    const std::string folded = foldedText(name);
    return std::ranges::any_of(
        words, [&](const char* each) { return folded.find(each) != std::string::npos; });
}

} // namespace

Edit scheduleEdit(const Book& book, IdSource& ids, const ScheduleTarget& target,
    const ScheduleReading& reading, std::string_view fileName) {
    if (reading.rows.empty())
        return {};
    Adding adding(book, ids, target.plan,
        "Bring in " + spokenCount(reading) + " from " + std::string(fileName));
    for (const ScheduleRow& row : reading.rows)
        adding.add(row);
    rememberChoices(adding.edit(), book, ids, reading);
    return adding.edit().take();
}

Edit levelsEdit(
    const Book& book, IdSource& ids, Id<Plan> plan, const std::vector<std::string>& names) {
    std::string sentence = names.size() == 1 ? "Add level" : "Add levels";
    for (std::size_t i = 0; i < names.size(); ++i)
        sentence += (i == 0 ? " " : ", ") + names[i];
    Adding adding(book, ids, plan, std::move(sentence));
    int position = nextPosition<Level>(book.sheet(plan));
    for (const std::string& name : names) {
        Level level;
        level.name = name;
        level.upper = isUpper(name);
        adding.add(std::move(level), position);
    }
    return adding.edit().take();
}

} // namespace miterbook
