// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/week_columns.h"

#include "basics/typed_date.h"
#include "book/said_words.h"
#include "hours/done_units.h"
#include "io/hours_words.h"
#include "widgets/columns.h"

namespace miterbook {

namespace {

QStringList people(const Book& book) {
    QStringList names;
    for (const auto& [id, person] : book.prices.of<CrewMember>()) {
        if (person.active)
            names << text(person.name);
    }
    return names;
}

/// Those whose time is still being written.
QStringList houses(const Book& book) {
    QStringList names;
    for (const auto& [id, house] : book.jobs.of<House>()) {
        if (house.stage != HouseStage::paid)
            names << text(house.name);
    }
    return names << QStringLiteral("shop");
}

/// What a line of the week or an entry is of; the one place that reads and writes it.
template <class Row>
auto& keyIn(Row& row) {
    if constexpr (requires { row.line; })
        return row.line.key;
    else
        return row;
}

template <class Row>
constexpr Column<Row> personColumn() {
    return {.title = QT_TRANSLATE_NOOP("Column", "Who"),
        .kind = CellKind::choice,
        .read
        = [](const Row& row, const Book& book) { return personText(keyIn(row).person, book); },
        .edit = [](Row& row, const QString& typed, const Book& book) -> Result<void> {
            const auto person = personCalled(utf8(typed.trimmed()), book.prices);
            if (!person)
                return person.error();
            keyIn(row).person = *person;
            return {};
        },
        .choices = [](const Row&, const Book& book) { return people(book); },
        .letters = 16};
}

template <class Row>
constexpr Column<Row> houseColumn() {
    return {.title = QT_TRANSLATE_NOOP("Column", "House"),
        .kind = CellKind::choice,
        .read = [](const Row& row, const Book& book) { return houseText(keyIn(row).house, book); },
        .edit = [](Row& row, const QString& typed, const Book& book) -> Result<void> {
            const auto house = houseCalled(utf8(typed.trimmed()), book);
            if (!house)
                return house.error();
            keyIn(row).house = *house;
            return {};
        },
        .choices = [](const Row&, const Book& book) { return houses(book); },
        .letters = 14};
}

template <class Row>
constexpr Column<Row> whatColumn() {
    return {.title = QT_TRANSLATE_NOOP("Column", "What"),
        .kind = CellKind::choice,
        .read =
            [](const Row& row, const Book& book) {
                const auto& key = keyIn(row);
                return whatText(key.work, key.task, key.kind, book.prices.shop().unit);
            },
        .edit = [](Row& row, const QString& typed, const Book&) -> Result<void> {
            const auto what = workCalled(utf8(typed.trimmed()));
            if (!what)
                return what.error();
            auto& key = keyIn(row);
            key.work = what->work;
            key.task = what->task;
            key.kind = what->kind;
            return {};
        },
        .choices
        = [](const Row&, const Book& book) { return whatChoices(book.prices.shop().unit); },
        .letters = 20}; // stool and apron window
}

/// The unit of what is finished of a line.
Unit doneUnitOf(const WeekKey& key) {
    return doneUnit(key.work, key.task);
}

template <std::size_t day>
constexpr Column<WeekRow> dayColumn(const char* title) {
    return {.title = title,
        .kind = CellKind::number,
        .read =
            [](const WeekRow& row, const Book& book) {
                WeekCell cell = row.line.days[day];
                cell.done = amountSaid(
                    cell.done, doneUnitOf(row.line.key), book.prices.shop().unit);
                return dayText(cell);
            },
        .edit = [](WeekRow& row, const QString& typed, const Book& book) -> Result<void> {
            const auto cell = readDay(typed);
            if (!cell)
                return cell.error();
            row.line.days[day].time = cell->time;
            row.line.days[day].done = amountCounted(
                cell->done, doneUnitOf(row.line.key), book.prices.shop().unit);
            return {};
        },
        .number = [](const WeekRow& row) { return row.line.days[day].time.minutes(); },
        .write = [](std::int64_t minutes,
                     const Book&) { return text(formatHours(Hours::minutes(minutes))); },
        .summed = true,
        .letters = 11}; // 7.75 / 1,200
}

constexpr Column<WeekRow> totalColumn{.title = QT_TRANSLATE_NOOP("Column", "Hours"),
    .kind = CellKind::number,
    .number = [](const WeekRow& row) { return row.line.time().minutes(); },
    .write
    = [](std::int64_t minutes, const Book&) { return text(formatHours(Hours::minutes(minutes))); },
    .summed = true};

constexpr Column<WeekRow> doneColumn{.title = QT_TRANSLATE_NOOP("Column", "Finished"),
    .kind = CellKind::number,
    .read =
        [](const WeekRow& row, const Book& book) {
            const Quantity done = amountSaid(
                row.line.done(), doneUnitOf(row.line.key), book.prices.shop().unit);
            return done == Quantity() ? QString() : text(formatQuantity(done));
        },
    .number = [](const WeekRow& row) { return row.line.done().thousandths(); }};

constexpr Column<WeekRow> approvedColumn{
    .title = QT_TRANSLATE_NOOP("Column", "Approved"), .read = [](const WeekRow& row, const Book&) {
        return row.approved ? QCoreApplication::translate("Column", "yes") : QString();
    }};

constexpr const char* sunday = QT_TRANSLATE_NOOP("Column", "Sun");
constexpr const char* monday = QT_TRANSLATE_NOOP("Column", "Mon");
constexpr const char* tuesday = QT_TRANSLATE_NOOP("Column", "Tue");
constexpr const char* wednesday = QT_TRANSLATE_NOOP("Column", "Wed");
constexpr const char* thursday = QT_TRANSLATE_NOOP("Column", "Thu");
constexpr const char* friday = QT_TRANSLATE_NOOP("Column", "Fri");
constexpr const char* saturday = QT_TRANSLATE_NOOP("Column", "Sat");

using Days = std::array<const char*, daysOfWeek>;

constexpr std::array<Column<WeekRow>, 13> weekOfDays(const Days& names) {
    return {personColumn<WeekRow>(), houseColumn<WeekRow>(), whatColumn<WeekRow>(),
        dayColumn<0>(names[0]), dayColumn<1>(names[1]), dayColumn<2>(names[2]),
        dayColumn<3>(names[3]), dayColumn<4>(names[4]), dayColumn<5>(names[5]),
        dayColumn<6>(names[6]), totalColumn, doneColumn, approvedColumn};
}

constexpr auto fromMonday = weekOfDays(
    {monday, tuesday, wednesday, thursday, friday, saturday, sunday});
constexpr auto fromSunday = weekOfDays(
    {sunday, monday, tuesday, wednesday, thursday, friday, saturday});
constexpr auto fromSaturday = weekOfDays(
    {saturday, sunday, monday, tuesday, wednesday, thursday, friday});

constexpr Column<TimeEntry> entryHours{.title = QT_TRANSLATE_NOOP("Column", "Hours"),
    .kind = CellKind::number,
    .edit = [](TimeEntry& row, const QString& typed,
                const Book&) { return putInto<&TimeEntry::time>(row, parseHours(utf8(typed))); },
    .number = [](const TimeEntry& row) { return row.time.minutes(); },
    .write
    = [](std::int64_t minutes, const Book&) { return text(formatHours(Hours::minutes(minutes))); },
    .summed = true};

/// What was worked lies behind: a day without a year is the last such.
Result<void> typeEntryDate(TimeEntry& row, const QString& typed, const Book& book) {
    return putInto<&TimeEntry::date>(
        row, parseTypedDate(utf8(typed), book.prices.shop().monthFirst, book.prices.day()));
}

Unit doneUnitOfEntry(const TimeEntry& entry) {
    return doneUnit(entry);
}

constexpr Column<TimeEntry> entryColumnList[] = {
    dateColumn<&TimeEntry::date>(QT_TRANSLATE_NOOP("Column", "Date")).editedBy(typeEntryDate),
    personColumn<TimeEntry>(),
    houseColumn<TimeEntry>(),
    whatColumn<TimeEntry>(),
    entryHours,
    amountColumn<&TimeEntry::done, doneUnitOfEntry>(QT_TRANSLATE_NOOP("Column", "Finished")),
    textColumn<&TimeEntry::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

} // namespace

std::span<const Column<WeekRow>> weekColumns(WeekStart start) {
    switch (start) {
    case WeekStart::sunday:
        return fromSunday;
    case WeekStart::saturday:
        return fromSaturday;
    default:
        return fromMonday;
    }
}

std::span<const Column<TimeEntry>> entryColumns() {
    return entryColumnList;
}

QString whatText(PieceOfWork work, Task task, TimeKind kind, LengthUnit written) {
    if (kind != TimeKind::work)
        return text(word(kind));
    return text(task == Task::other ? word(work) : said(task, written));
}

QStringList whatChoices(LengthUnit written) {
    QStringList all = wordsOf<PieceOfWork>();
    for (const QString& kind : wordsOf<TimeKind>()) {
        if (!all.contains(kind) && kind != text(word(TimeKind::work)))
            all << kind;
    }
    for (const auto& task : Words<Task>::list)
        all << text(said(task.value, written));
    return all;
}

QString personText(Id<CrewMember> person, const Book& book) {
    const CrewMember* member = book.prices.of<CrewMember>().find(person);
    return member ? text(member->name) : QString();
}

QString houseText(Id<House> house, const Book& book) {
    const House* found = book.house(house);
    return found ? text(found->name) : QStringLiteral("shop");
}

QString dayText(const WeekCell& cell) {
    const int decimals = cell.time.minutes() % 6 == 0 ? 1 : 2;
    if (cell.done != Quantity())
        return text(formatHours(cell.time, decimals) + " / " + formatQuantity(cell.done));
    return cell.time == Hours() ? QString() : text(formatHours(cell.time, decimals));
}

Result<WeekCell> readDay(const QString& typed) {
    WeekCell cell;
    const QStringList parts = typed.split(u'/');
    if (parts.size() > 2)
        return badInput("Write the hours of a day as 7.5, and what was finished as 7.5 / 6.");
    if (!parts.front().trimmed().isEmpty()) {
        const auto time = parseHours(utf8(parts.front().trimmed()));
        if (!time)
            return time.error();
        cell.time = *time;
    }
    if (parts.size() == 2) {
        const auto done = parseQuantity(utf8(parts.back().trimmed()));
        if (!done)
            return done.error();
        cell.done = *done;
    }
    return cell;
}

} // namespace miterbook
