// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/house_line.h"

#include "widgets/columns.h"

#include <QCoreApplication>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

QString planText(const HouseLine& line, const Book& book) {
    const Plan* plan = book.plan(line.house.plan);
    return plan ? text(plan->name) : QString();
}

QString builderText(const HouseLine& line, const Book& book) {
    const Plan* plan = book.plan(line.house.plan);
    const Builder* builder = plan ? book.builderOf(*plan) : nullptr;
    return builder ? text(builder->name) : QString();
}

template <std::string House::*M>
constexpr Column<HouseLine> houseText(const char* title) {
    return {.title = title,
        .read = [](const HouseLine& line, const Book&) { return text(line.house.*M); },
        .edit = [](HouseLine& line, const QString& typed, const Book&) -> Result<void> {
            line.house.*M = utf8(typed.trimmed());
            return {};
        }};
}

constexpr Column<HouseLine> stageColumn{.title = QT_TRANSLATE_NOOP("Column", "Stage"),
    .kind = CellKind::choice,
    .read = [](const HouseLine& line, const Book&) { return text(word(line.house.stage)); },
    .edit = [](HouseLine& line, const QString& typed, const Book&) -> Result<void> {
        const auto stage = chosenWord<HouseStage>(typed);
        if (!stage)
            return stage.error();
        line.house.stage = *stage;
        return {};
    },
    .choices = [](const HouseLine&, const Book&) { return wordsOf<HouseStage>(); }};

constexpr Column<HouseLine> startedColumn{.title = QT_TRANSLATE_NOOP("Column", "Started"),
    .read = [](const HouseLine& line, const Book&) { return text(isoDate(line.house.started)); },
    .edit = [](HouseLine& line, const QString& typed, const Book& book) -> Result<void> {
        const auto day = dayIn(typed, book);
        if (!day)
            return day.error();
        line.house.started = *day;
        return {};
    }};

constexpr Column<HouseLine> finishedColumn{.title = QT_TRANSLATE_NOOP("Column", "Finished"),
    .read = [](const HouseLine& line, const Book&) { return text(isoDate(line.house.finished)); },
    .edit = [](HouseLine& line, const QString& typed, const Book& book) -> Result<void> {
        const auto day = dayIn(typed, book);
        if (!day)
            return day.error();
        line.house.finished = *day;
        return {};
    },
    .applies = [](const HouseLine& line) { return isFinished(line.house); }};

constexpr Column<HouseLine> priceColumn{.title = QT_TRANSLATE_NOOP("Column", "Price"),
    .kind = CellKind::money,
    .read
    = [](const HouseLine& line,
          const Book&) { return line.figure ? text(formatMoney(line.figure->price)) : QString(); },
    .number = [](const HouseLine& line) { return line.figure ? line.figure->price.cents() : 0; },
    .write = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
    .whereFrom =
        [](const HouseLine&, const Book&) {
            return QCoreApplication::translate("Column",
                "The bid as the house was won; before that from its own plan, the book's prices "
                "and a quick stick plan. Open the house to see the bid.");
        },
    .summed = true};

constexpr Column<HouseLine> hoursColumn{.title = QT_TRANSLATE_NOOP("Column", "Hours bid"),
    .kind = CellKind::number,
    .read
    = [](const HouseLine& line,
          const Book&) { return line.figure ? text(formatHours(line.figure->hours)) : QString(); },
    .number = [](const HouseLine& line) { return line.figure ? line.figure->hours.minutes() : 0; },
    .write
    = [](std::int64_t minutes, const Book&) { return text(formatHours(Hours::minutes(minutes))); },
    .whereFrom =
        [](const HouseLine&, const Book&) {
            return QCoreApplication::translate("Column",
                "Bid as the house was won; before that from its takeoff and the book's rates.");
        },
    .summed = true};

constexpr Column<HouseLine> billedColumn{.title = QT_TRANSLATE_NOOP("Column", "Billed"),
    .kind = CellKind::money,
    .number = [](const HouseLine& line) { return line.money.work.cents(); },
    .write = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
    .whereFrom =
        [](const HouseLine& line, const Book&) {
            return QCoreApplication::translate(
                "Column", "Work on its invoices, before tax, with %1 of retainage; %2 was agreed.")
                .arg(text(formatMoney(line.money.retained)), text(formatMoney(line.money.value)));
        },
    .summed = true};

constexpr Column<HouseLine> owedColumn{.title = QT_TRANSLATE_NOOP("Column", "Owed"),
    .kind = CellKind::money,
    .number = [](const HouseLine& line) { return line.money.owed.cents(); },
    .write = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
    .whereFrom =
        [](const HouseLine&, const Book&) {
            return QCoreApplication::translate("Column",
                "Open on its invoices, tax included; retainage that is held is not owed yet.");
        },
    .summed = true};

constexpr Column<HouseLine> usedColumn{.title = QT_TRANSLATE_NOOP("Column", "Used"),
    .kind = CellKind::number,
    .read
    = [](const HouseLine& line,
          const Book&) { return line.used > Hours() ? text(formatHours(line.used)) : QString(); },
    .number = [](const HouseLine& line) { return line.used.minutes(); },
    .write
    = [](std::int64_t minutes, const Book&) { return text(formatHours(Hours::minutes(minutes))); },
    .whereFrom =
        [](const HouseLine&, const Book&) {
            return QCoreApplication::translate("Column", "All hours written down for the house.");
        },
    .summed = true};

/// "heading 12.5 h over": how it stands in words, sorted by what it does to the profit.
QString standing(const HouseLine& line, const Book&) {
    if (!line.hasHours())
        return {};
    const Hours over = line.figure->over;
    const QString hours = text(formatHours(over < Hours() ? Hours() - over : over));
    const auto say = [](const char* words) { return QCoreApplication::translate("Column", words); };
    const bool finished = isFinished(line.house);
    if (over == Hours())
        return say(QT_TRANSLATE_NOOP("Column", "as bid"));
    if (over > Hours())
        return (finished ? say(QT_TRANSLATE_NOOP("Column", "%1 h over"))
                         : say(QT_TRANSLATE_NOOP("Column", "heading %1 h over")))
            .arg(hours);
    return (finished ? say(QT_TRANSLATE_NOOP("Column", "%1 h under"))
                     : say(QT_TRANSLATE_NOOP("Column", "heading %1 h under")))
        .arg(hours);
}

constexpr Column<HouseLine> standsColumn{.title = QT_TRANSLATE_NOOP("Column", "Against the bid"),
    .read = standing,
    .number
    = [](const HouseLine& line) { return line.hasHours() ? line.figure->toProfit.cents() : 0; },
    .whereFrom =
        [](const HouseLine& line, const Book&) {
            if (!line.hasHours())
                return QString();
            return QCoreApplication::translate("Column",
                "Hours at completion against the bid, by the pace so far: %1 to the profit. Sorted "
                "from the house that loses most.")
                .arg(text(formatMoney(line.figure->toProfit)));
        }};

constexpr Column<HouseLine> columns[] = {
    houseText<&House::name>(QT_TRANSLATE_NOOP("Column", "House")),
    stageColumn,
    Column<HouseLine>{.title = QT_TRANSLATE_NOOP("Column", "Builder"), .read = builderText},
    Column<HouseLine>{.title = QT_TRANSLATE_NOOP("Column", "Plan"), .read = planText},
    houseText<&House::lot>(QT_TRANSLATE_NOOP("Column", "Lot")),
    houseText<&House::address>(QT_TRANSLATE_NOOP("Column", "Address")),
    startedColumn,
    priceColumn,
    hoursColumn,
    usedColumn,
    standsColumn,
    billedColumn,
    owedColumn,
    finishedColumn,
    houseText<&House::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

} // namespace

std::span<const Column<HouseLine>> houseColumns() {
    return columns;
}

} // namespace miterbook
