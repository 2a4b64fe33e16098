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
    .edit = [](HouseLine& line, const QString& typed, const Book&) -> Result<void> {
        const auto day = parseIsoDate(utf8(typed.trimmed()));
        if (!day)
            return day.error();
        line.house.started = *day;
        return {};
    }};

constexpr Column<HouseLine> priceColumn{.title = QT_TRANSLATE_NOOP("Column", "Price"),
    .kind = CellKind::money,
    .read = [](const HouseLine& line, const Book&) {
        return line.figure ? text(formatMoney(line.figure->price)) : QString();
    },
    .number = [](const HouseLine& line) { return line.figure ? line.figure->price.cents() : 0; },
    .write = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
    .whereFrom = [](const HouseLine&, const Book&) {
        return QCoreApplication::translate("Column",
            "From the house's own plan, the book's prices and a quick stick plan. "
            "Open the house to see the bid.");
    },
    .summed = true};

constexpr Column<HouseLine> hoursColumn{.title = QT_TRANSLATE_NOOP("Column", "Hours"),
    .kind = CellKind::number,
    .read = [](const HouseLine& line, const Book&) {
        return line.figure ? text(formatHours(line.figure->hours)) : QString();
    },
    .number = [](const HouseLine& line) { return line.figure ? line.figure->hours.minutes() : 0; },
    .write = [](std::int64_t minutes, const Book&) {
        return text(formatHours(Hours::minutes(minutes)));
    },
    .whereFrom = [](const HouseLine&, const Book&) {
        return QCoreApplication::translate(
            "Column", "From the house's takeoff and the book's labour rates and factors.");
    },
    .summed = true};

constexpr Column<HouseLine> billedColumn{.title = QT_TRANSLATE_NOOP("Column", "Billed"),
    .kind = CellKind::money,
    .number = [](const HouseLine& line) { return line.money.work.cents(); },
    .write = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
    .whereFrom = [](const HouseLine& line, const Book&) {
        return QCoreApplication::translate("Column",
            "Work on its invoices, before tax, with %1 of retainage; %2 was agreed.")
            .arg(text(formatMoney(line.money.retained)), text(formatMoney(line.money.value)));
    },
    .summed = true};

constexpr Column<HouseLine> owedColumn{.title = QT_TRANSLATE_NOOP("Column", "Owed"),
    .kind = CellKind::money,
    .number = [](const HouseLine& line) { return line.money.owed.cents(); },
    .write = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
    .whereFrom = [](const HouseLine&, const Book&) {
        return QCoreApplication::translate(
            "Column", "Open on its invoices, tax included; retainage that is held is not owed yet.");
    },
    .summed = true};

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
    billedColumn,
    owedColumn,
    houseText<&House::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

} // namespace

std::span<const Column<HouseLine>> houseColumns() {
    return columns;
}

} // namespace miterbook
