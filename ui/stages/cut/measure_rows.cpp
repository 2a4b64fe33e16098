// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/measure_rows.h"

#include "cut/opening_states.h"
#include "stages/cut/cut_desk.h"
#include "widgets/columns.h"

namespace miterbook {

namespace {

LengthStyle styleOf(const Book& book) {
    return book.prices.shop().lengths();
}

/// One reading of the tape; an empty cell is none.
template <Length Measure::*M>
constexpr Column<MeasureRow> reading(const char* title) {
    return {.title = title,
        .kind = CellKind::length,
        .edit = [](MeasureRow& row, const QString& typed, const Book& book) -> Result<void> {
            if (typed.trimmed().isEmpty()) {
                row.measure.*M = Length();
                return {};
            }
            const auto length = parseLength(utf8(typed), book.prices.shop().unit);
            if (!length)
                return length.error();
            row.measure.*M = *length;
            return {};
        },
        .number = [](const MeasureRow& row) { return (row.measure.*M).nm(); },
        .write =
            [](std::int64_t nm, const Book& book) {
                return nm == 0 ? QString()
                               : text(formatLength(Length::nanometres(nm), styleOf(book)));
            }};
}

/// Proud of the wall, or with a minus shy of it.
Result<void> putJamb(MeasureRow& row, const QString& typed, const Book& book) {
    QString size = typed.trimmed();
    const bool shy = size.startsWith(u'-') || size.startsWith(u'\u2212');
    if (shy || size.startsWith(u'+'))
        size = size.mid(1);
    if (size.isEmpty()) {
        row.measure.proud = Length();
        return {};
    }
    const auto length = parseLength(utf8(size), book.prices.shop().unit);
    if (!length)
        return length.error();
    row.measure.proud = shy ? -*length : *length;
    return {};
}

QString remarkText(const MeasureRow& row) {
    QStringList lines;
    for (const MeasureRemark& remark : row.remarks)
        lines << text(remark.sentence);
    return lines.join(QLatin1Char('\n'));
}

constexpr Column<MeasureRow> measureList[] = {
    {.title = QT_TRANSLATE_NOOP("Column", "No."),
        .kind = CellKind::number,
        .edit = [](MeasureRow& row, const QString& typed, const Book&) -> Result<void> {
            const auto number = parseWhole(utf8(typed), "The place in walking order", 1, 100'000);
            if (!number)
                return number.error();
            row.number = *number;
            return {};
        },
        .number = [](const MeasureRow& row) { return std::int64_t(row.number); },
        .write = [](std::int64_t number, const Book&) { return QString::number(number); }},
    {.title = QT_TRANSLATE_NOOP("Column", "Opening"),
        .read = [](const MeasureRow& row, const Book&) { return text(row.name); }},
    {.title = QT_TRANSLATE_NOOP("Column", "Plan"),
        .read =
            [](const MeasureRow& row, const Book& book) {
                return text(formatLength(row.planWidth, styleOf(book)) + " x "
                    + formatLength(row.planHeight, styleOf(book)));
            }},
    reading<&Measure::widthTop>(QT_TRANSLATE_NOOP("Column", "Width top")),
    reading<&Measure::widthMiddle>(QT_TRANSLATE_NOOP("Column", "Width mid")),
    reading<&Measure::widthBottom>(QT_TRANSLATE_NOOP("Column", "Width bottom")),
    reading<&Measure::heightLeft>(QT_TRANSLATE_NOOP("Column", "Height left")),
    reading<&Measure::heightMiddle>(QT_TRANSLATE_NOOP("Column", "Height mid")),
    reading<&Measure::heightRight>(QT_TRANSLATE_NOOP("Column", "Height right")),
    reading<&Measure::diagonalUp>(QT_TRANSLATE_NOOP("Column", "Diagonal up")),
    reading<&Measure::diagonalDown>(QT_TRANSLATE_NOOP("Column", "Diagonal down")),
    reading<&Measure::proud>(QT_TRANSLATE_NOOP("Column", "Jamb proud")).editedBy(putJamb),
    {.title = QT_TRANSLATE_NOOP("Column", "Note"),
        .read = [](const MeasureRow& row, const Book&) { return text(row.measure.note); },
        .edit = [](MeasureRow& row, const QString& typed, const Book&) -> Result<void> {
            row.measure.note = utf8(typed.trimmed());
            return {};
        }},
    {.title = QT_TRANSLATE_NOOP("Column", "State"),
        .read = [](const MeasureRow& row,
                    const Book&) { return row.state ? text(word(*row.state)) : QString(); }},
    {.title = QT_TRANSLATE_NOOP("Column", "Look at"),
        .read =
            [](const MeasureRow& row, const Book&) {
                return row.remarks.empty() ? QString() : text(row.remarks.front().sentence);
            },
        .whereFrom = [](const MeasureRow& row, const Book&) { return remarkText(row); }},
};

Length faceOf(const OpeningUnit& unit, const CutDesk& cut) {
    const Plan& plan = cut.whole().plan;
    const Id<Profile> casing = unit.opening.casing ? unit.opening.casing
        : unit.opening.isWindow()                  ? plan.windowCasing
                                                   : plan.doorCasing;
    const Profile* profile = cut.book().prices.profile(casing);
    return profile ? profile->width : Length();
}

} // namespace

std::vector<MeasureRow> measureRows(const CutDesk& cut) {
    const UnitStates states = unitStates(cut.figures().sheet);
    std::vector<MeasureRow> rows;
    for (const OpeningUnit* unit : cut.units()) {
        MeasureRow row{unit->measure, unit->number, unit->name, unit->opening.width,
            unit->opening.height, {}, {}};
        const auto state = states.find({unit->opening.id.value(), unit->unit});
        if (state != states.end())
            row.state = state->second;
        row.remarks = remarksOn(unit->measure, unit->opening, cut.book().bench(),
            faceOf(*unit, cut), styleOf(cut.book()));
        rows.push_back(std::move(row));
    }
    return rows;
}

std::span<const Column<MeasureRow>> measureColumns() {
    return measureList;
}

} // namespace miterbook
