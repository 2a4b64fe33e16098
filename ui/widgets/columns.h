// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "book/said_words.h"
#include "desk/text.h"
#include "widgets/column.h"
#include "widgets/column_text.h"

#include <QCoreApplication>

namespace miterbook {

// Columns over one member of a row: textColumn<&Room::name>("Name"). Titles are marked for
// translation with QT_TRANSLATE_NOOP("Column", ...).

template <auto Member>
struct MemberOf;

template <class R, class T, T R::*M>
struct MemberOf<M> {
    using Row = R;
    using Value = T;
};

template <auto M>
using RowOf = typename MemberOf<M>::Row;
template <auto M>
using ValueOf = typename MemberOf<M>::Value;

/// Puts a parsed value into the member, or passes the error on.
template <auto M>
Result<void> putInto(RowOf<M>& row, const Result<ValueOf<M>>& parsed) {
    if (!parsed)
        return parsed.error();
    row.*M = *parsed;
    return {};
}

template <auto M>
constexpr Column<RowOf<M>> textColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .read = [](const Row& row, const Book&) { return text(row.*M); },
        .edit = [](Row& row, const QString& typed, const Book&) -> Result<void> {
            row.*M = utf8(typed.trimmed());
            return {};
        }};
}

template <auto M>
constexpr Column<RowOf<M>> linesColumn(const char* title) {
    Column<RowOf<M>> column = textColumn<M>(title);
    column.kind = CellKind::lines;
    return column;
}

/// What a length of zero is shown as: nothing where it means "not said".
enum class Zero { hidden, shown };

template <auto M, Zero zero = Zero::hidden>
constexpr Column<RowOf<M>> lengthColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::length,
        .edit = [](Row& row, const QString& typed, const Book& book) -> Result<void> {
            if (typed.trimmed().isEmpty()) {
                row.*M = Length();
                return {};
            }
            return putInto<M>(row, parseLength(utf8(typed), book.prices.shop().unit));
        },
        .number = [](const Row& row) { return (row.*M).nm(); },
        .write =
            [](std::int64_t nm, const Book& book) {
                if (nm == 0 && zero == Zero::hidden)
                    return QString();
                return text(formatLength(Length::nanometres(nm), book.prices.shop().lengths()));
            }};
}

/// Running feet of a length, computed.
template <auto M>
constexpr Column<RowOf<M>> feetColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::number,
        .number = [](const Row& row) { return (row.*M).nm(); },
        .write
        = [](std::int64_t nm, const Book&) { return text(formatFeet(Length::nanometres(nm))); }};
}

template <auto M>
constexpr Column<RowOf<M>> moneyColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::money,
        .edit = [](Row& row, const QString& typed,
                    const Book&) { return putInto<M>(row, parseMoney(utf8(typed))); },
        .number = [](const Row& row) { return (row.*M).cents(); },
        .write
        = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); }};
}

template <auto M>
constexpr Column<RowOf<M>> unitPriceColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::money,
        .edit = [](Row& row, const QString& typed,
                    const Book&) { return putInto<M>(row, parseUnitPrice(utf8(typed))); },
        .number = [](const Row& row) { return (row.*M).tenThousandths(); },
        .write
        = [](std::int64_t value,
              const Book&) { return text(formatUnitPrice(UnitPrice::tenThousandths(value))); }};
}

/// The same of what is said by the unit of a row, counted as the book does (amount_text.h).
template <auto M, auto unitIn, auto counted>
Result<void> putCounted(RowOf<M>& row, const Result<ValueOf<M>>& said, const Book& book) {
    if (!said)
        return said.error();
    row.*M = counted(*said, unitIn(row), book.prices.shop().unit);
    return {};
}

/// What one unit costs; `unitIn` says of which unit a row is. Priced by the metre where the shop
/// writes so.
template <auto M, auto unitIn>
constexpr Column<RowOf<M>> priceOfUnitColumn(const char* title) {
    using Row = RowOf<M>;
    Column<Row> column = unitPriceColumn<M>(title);
    column.edit = [](Row& row, const QString& typed, const Book& book) {
        return putCounted<M, unitIn, priceCounted>(row, parseUnitPrice(utf8(typed)), book);
    };
    column.writeIn = [](std::int64_t value, const Row& row, const Book& book) {
        return text(formatUnitPrice(
            priceSaid(UnitPrice::tenThousandths(value), unitIn(row), book.prices.shop().unit)));
    };
    return column;
}

template <auto M>
constexpr Column<RowOf<M>> percentColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::percent,
        .edit = [](Row& row, const QString& typed,
                    const Book&) { return putInto<M>(row, parsePercent(utf8(typed))); },
        .number = [](const Row& row) { return (row.*M).basisPoints(); },
        .write = [](std::int64_t points,
                     const Book&) { return text(formatPercent(Percent::basisPoints(points))); }};
}

template <auto M>
constexpr Column<RowOf<M>> minutesColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::number,
        .edit = [](Row& row, const QString& typed,
                    const Book&) { return putInto<M>(row, parseMinutesPerUnit(utf8(typed))); },
        .number = [](const Row& row) { return (row.*M).hundredths(); },
        .write =
            [](std::int64_t value, const Book&) {
                return text(formatMinutesPerUnit(MinutesPerUnit::hundredths(value)));
            }};
}

/// What one unit takes, likewise.
template <auto M, auto unitIn>
constexpr Column<RowOf<M>> minutesOfUnitColumn(const char* title) {
    using Row = RowOf<M>;
    Column<Row> column = minutesColumn<M>(title);
    column.edit = [](Row& row, const QString& typed, const Book& book) {
        return putCounted<M, unitIn, minutesCounted>(row, parseMinutesPerUnit(utf8(typed)), book);
    };
    column.writeIn = [](std::int64_t value, const Row& row, const Book& book) {
        return text(formatMinutesPerUnit(
            minutesSaid(MinutesPerUnit::hundredths(value), unitIn(row), book.prices.shop().unit)));
    };
    return column;
}

template <auto M>
constexpr Column<RowOf<M>> quantityColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::number,
        .edit = [](Row& row, const QString& typed,
                    const Book&) { return putInto<M>(row, parseQuantity(utf8(typed))); },
        .number = [](const Row& row) { return (row.*M).thousandths(); },
        .write
        = [](std::int64_t value,
              const Book&) { return text(formatQuantity(Quantity::thousandths(value), 3)); }};
}

/// How much of a unit, likewise.
template <auto M, auto unitIn>
constexpr Column<RowOf<M>> amountColumn(const char* title) {
    using Row = RowOf<M>;
    Column<Row> column = quantityColumn<M>(title);
    column.edit = [](Row& row, const QString& typed, const Book& book) {
        return putCounted<M, unitIn, amountCounted>(row, parseQuantity(utf8(typed)), book);
    };
    column.writeIn = [](std::int64_t value, const Row& row, const Book& book) {
        const LengthUnit written = book.prices.shop().unit;
        const Unit unit = unitIn(row);
        const int decimals = unitText(unit, written) == word(unit) ? 3 : 2; // nobody types more
        return text(
            formatQuantity(amountSaid(Quantity::thousandths(value), unit, written), decimals));
    };
    return column;
}

/// Whole running feet, or metres.
template <auto M, int most>
constexpr Column<RowOf<M>> runColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::run,
        .edit = [](Row& row, const QString& typed, const Book& book) -> Result<void> {
            const auto run = parseWhole(utf8(typed), "This number", 1, most);
            if (!run)
                return run.error();
            const Quantity feet = amountCounted(
                Quantity::count(*run), Unit::linearFoot, book.prices.shop().unit);
            row.*M = static_cast<int>(
                std::min<std::int64_t>(roundedQuotient(feet.thousandths(), 1000), most));
            return {};
        },
        .number = [](const Row& row) { return std::int64_t(row.*M); },
        .write =
            [](std::int64_t feet, const Book& book) {
                return text(formatQuantity(
                    amountSaid(Quantity::count(feet), Unit::linearFoot, book.prices.shop().unit),
                    0));
            }};
}

/// Whole square feet of a floor, or square metres; nothing typed is none said.
template <auto M>
constexpr Column<RowOf<M>> floorColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::floor,
        .edit = [](Row& row, const QString& typed, const Book& book) -> Result<void> {
            if (typed.trimmed().isEmpty()) {
                row.*M = 0;
                return {};
            }
            const auto area = parseWhole(utf8(typed), "A floor area", 0, 1'000'000);
            if (!area)
                return area.error();
            row.*M = floorCounted(*area, book.prices.shop().unit);
            return {};
        },
        .number = [](const Row& row) { return std::int64_t(row.*M); },
        .write =
            [](std::int64_t feet, const Book& book) {
                return feet == 0
                    ? QString()
                    : QString::number(floorSaid(static_cast<int>(feet), book.prices.shop().unit));
            }};
}

/// Hours, computed.
template <auto M>
constexpr Column<RowOf<M>> hoursColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::number,
        .number = [](const Row& row) { return (row.*M).minutes(); },
        .write = [](std::int64_t minutes,
                     const Book&) { return text(formatHours(Hours::minutes(minutes))); }};
}

/// A whole number; one that is hidden when zero is read from nothing as zero.
template <auto M, int low, int high, Zero zero = Zero::shown>
constexpr Column<RowOf<M>> wholeColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::number,
        .edit = [](Row& row, const QString& typed, const Book&) -> Result<void> {
            if (zero == Zero::hidden && typed.trimmed().isEmpty()) {
                row.*M = 0;
                return {};
            }
            return putInto<M>(row, parseWhole(utf8(typed), "This number", low, high));
        },
        .number = [](const Row& row) { return std::int64_t(row.*M); },
        .write =
            [](std::int64_t value, const Book&) {
                return value == 0 && zero == Zero::hidden ? QString() : QString::number(value);
            }};
}

template <auto M>
constexpr Column<RowOf<M>> angleColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::number,
        .edit = [](Row& row, const QString& typed, const Book&) -> Result<void> {
            const auto degrees = parseQuantity(
                utf8(typed.trimmed().isEmpty() ? QString(u'0') : typed));
            if (!degrees)
                return degrees.error();
            row.*M = Angle::hundredths(degrees->thousandths() / 10);
            return {};
        },
        .number = [](const Row& row) { return (row.*M).hundredths(); },
        .write =
            [](std::int64_t value, const Book&) {
                return value == 0 ? QString()
                                  : text(formatQuantity(Quantity::thousandths(value * 10), 2));
            }};
}

template <auto M>
constexpr Column<RowOf<M>> checkColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::check,
        .read = [](const Row& row, const Book&) { return text(row.*M ? "yes" : "no"); },
        .edit = [](Row& row, const QString& typed,
                    const Book&) { return putInto<M>(row, parseYesNo(typed)); },
        .number = [](const Row& row) { return std::int64_t(row.*M ? 1 : 0); }};
}

/// One of an enumeration's trade words.
template <auto M>
constexpr Column<RowOf<M>> wordColumn(const char* title) {
    using Row = RowOf<M>;
    using E = ValueOf<M>;
    return {.title = title,
        .kind = CellKind::choice,
        .read = [](const Row& row, const Book&) { return text(word(row.*M)); },
        .edit = [](Row& row, const QString& typed,
                    const Book&) { return putInto<M>(row, chosenWord<E>(typed)); },
        .choices = [](const Row&, const Book&) { return wordsOf<E>(); }};
}

/// A task or condition, in words that name sizes as the shop writes them; typed either way.
template <auto M, auto meant>
constexpr Column<RowOf<M>> saidColumn(const char* title) {
    using Row = RowOf<M>;
    using E = ValueOf<M>;
    Column<Row> column = wordColumn<M>(title);
    column.read = [](const Row& row, const Book& book) {
        return text(said(row.*M, book.prices.shop().unit));
    };
    column.edit = [](Row& row, const QString& typed, const Book&) -> Result<void> {
        if (const std::optional<E> known = meant(utf8(typed.trimmed()))) {
            row.*M = *known;
            return {};
        }
        return putInto<M>(row, chosenWord<E>(typed));
    };
    column.choices = [](const Row&, const Book& book) {
        QStringList words;
        for (const auto& entry : Words<E>::list)
            words << text(said(entry.value, book.prices.shop().unit));
        return words;
    };
    return column;
}

template <auto M>
constexpr Column<RowOf<M>> taskColumn(const char* title) {
    return saidColumn<M, taskSaid>(title);
}

template <auto M>
constexpr Column<RowOf<M>> conditionColumn(const char* title) {
    return saidColumn<M, conditionSaid>(title);
}

/// A day, shown as 2026-11-25 and typed as people write days.
template <auto M>
constexpr Column<RowOf<M>> dateColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .read = [](const Row& row, const Book&) { return text(isoDate(row.*M)); },
        .edit = [](Row& row, const QString& typed,
                    const Book& book) { return putInto<M>(row, dayIn(typed, book)); }};
}

} // namespace miterbook
