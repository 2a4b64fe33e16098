// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/book_tables.h"

#include "widgets/columns.h"
#include "widgets/profile_column.h"
#include "windows/book_table.h"

namespace miterbook {

namespace {

template <class Row>
constexpr Column<Row> fromColumn() {
    return wordColumn<&Row::origin>(QT_TRANSLATE_NOOP("Column", "From")).computed();
}

template <class Row>
Unit unitOfTask(const Row& row) {
    return unitOf(row.task);
}

template <class Row>
constexpr Column<Row> unitColumn() {
    return {
        .title = QT_TRANSLATE_NOOP("Column", "Unit"), .read = [](const Row& row, const Book& book) {
            return text(unitText(unitOf(row.task), book.prices.shop().unit));
        }};
}

constexpr Column<Part> partColumns[] = {
    textColumn<&Part::name>(QT_TRANSLATE_NOOP("Column", "Part")),
    wordColumn<&Part::use>(QT_TRANSLATE_NOOP("Column", "Counted as")),
    moneyColumn<&Part::price>(QT_TRANSLATE_NOOP("Column", "Price")),
    checkColumn<&Part::builderSupplies>(QT_TRANSLATE_NOOP("Column", "Builder supplies")),
    fromColumn<Part>(),
};

constexpr Column<Consumable> consumableColumns[] = {
    textColumn<&Consumable::name>(QT_TRANSLATE_NOOP("Column", "Consumable")),
    moneyColumn<&Consumable::price>(QT_TRANSLATE_NOOP("Column", "Price")),
    runColumn<&Consumable::feetEach, 1'000'000>(
        QT_TRANSLATE_NOOP("Column", "Trim that one serves")),
    fromColumn<Consumable>(),
    textColumn<&Consumable::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

constexpr Column<LabourRate> rateColumns[] = {
    taskColumn<&LabourRate::task>(QT_TRANSLATE_NOOP("Column", "Task")),
    minutesOfUnitColumn<&LabourRate::minutes, unitOfTask<LabourRate>>(
        QT_TRANSLATE_NOOP("Column", "Minutes")),
    unitColumn<LabourRate>(),
    fromColumn<LabourRate>(),
    textColumn<&LabourRate::source>(QT_TRANSLATE_NOOP("Column", "Source")),
};

constexpr Column<Factor> factorColumns[] = {
    conditionColumn<&Factor::condition>(QT_TRANSLATE_NOOP("Column", "Condition")),
    percentColumn<&Factor::percent>(QT_TRANSLATE_NOOP("Column", "Of the plain time")),
    fromColumn<Factor>(),
    textColumn<&Factor::source>(QT_TRANSLATE_NOOP("Column", "Source")),
};

constexpr Column<PiecePrice> piecePriceColumns[] = {
    taskColumn<&PiecePrice::task>(QT_TRANSLATE_NOOP("Column", "Task")),
    priceOfUnitColumn<&PiecePrice::price, unitOfTask<PiecePrice>>(
        QT_TRANSLATE_NOOP("Column", "Price")),
    unitColumn<PiecePrice>(),
    checkColumn<&PiecePrice::quoted>(QT_TRANSLATE_NOOP("Column", "Quoted for extras")),
    fromColumn<PiecePrice>(),
};

constexpr Column<CrewMember> crewColumns[] = {
    textColumn<&CrewMember::name>(QT_TRANSLATE_NOOP("Column", "Name")),
    moneyColumn<&CrewMember::wage>(QT_TRANSLATE_NOOP("Column", "Wage an hour")),
    checkColumn<&CrewMember::active>(QT_TRANSLATE_NOOP("Column", "Counts in the crew rate")),
};

constexpr Column<Burden> burdenColumns[] = {
    textColumn<&Burden::name>(QT_TRANSLATE_NOOP("Column", "Item")),
    percentColumn<&Burden::ofWages>(QT_TRANSLATE_NOOP("Column", "Of wages")),
    moneyColumn<&Burden::perYear>(QT_TRANSLATE_NOOP("Column", "A year, each person")),
    wholeColumn<&Burden::year, 0, 2200, Zero::hidden>(QT_TRANSLATE_NOOP("Column", "Figures of")),
    dateColumn<&Burden::from>(QT_TRANSLATE_NOOP("Column", "In force from")),
    fromColumn<Burden>(),
    textColumn<&Burden::source>(QT_TRANSLATE_NOOP("Column", "Source")),
};

constexpr Column<Builder> builderColumns[] = {
    textColumn<&Builder::name>(QT_TRANSLATE_NOOP("Column", "Builder")),
    textColumn<&Builder::contact>(QT_TRANSLATE_NOOP("Column", "Contact")),
    textColumn<&Builder::phone>(QT_TRANSLATE_NOOP("Column", "Phone")),
    textColumn<&Builder::email>(QT_TRANSLATE_NOOP("Column", "E-mail")),
    linesColumn<&Builder::address>(QT_TRANSLATE_NOOP("Column", "Address")),
    textColumn<&Builder::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

constexpr Column<PlanSet> planSetColumns[] = {
    Column<PlanSet>{.title = QT_TRANSLATE_NOOP("Column", "Builder"),
        .read =
            [](const PlanSet& set, const Book& book) {
                const Builder* builder = book.prices.of<Builder>().find(set.builder);
                return builder ? text(builder->name) : QString();
            }},
    textColumn<&PlanSet::name>(QT_TRANSLATE_NOOP("Column", "Plan set")),
    textColumn<&PlanSet::community>(QT_TRANSLATE_NOOP("Column", "Community")),
};

constexpr Column<Offcut> offcutColumns[] = {
    profileColumn<&Offcut::profile, NoProfile::unsaid>(QT_TRANSLATE_NOOP("Column", "Profile")),
    lengthColumn<&Offcut::length>(QT_TRANSLATE_NOOP("Column", "Length")),
    wholeColumn<&Offcut::count, 0, 10'000>(QT_TRANSLATE_NOOP("Column", "Count")).sum(),
    textColumn<&Offcut::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

template <class Row>
Row plainRow(int) {
    return {};
}

template <class Row>
QWidget* plainTable(Desk& desk, const QString& name, std::span<const Column<Row>> columns) {
    return bookTable(desk, bookSpec<Row>(desk, name, columns, plainRow<Row>));
}

/// A table with one row for each of an enumeration: a new row begins as the first that is missing.
template <class Row, auto M>
QWidget* tableOfEach(Desk& desk, const QString& name, std::span<const Column<Row>> columns) {
    return bookTable(desk, bookSpec<Row>(desk, name, columns, [&desk](int) {
        Row row;
        row.*M = firstFree<Row, M>(desk.book());
        return row;
    }));
}

} // namespace

QWidget* partsTable(Desk& desk) {
    return plainTable<Part>(desk, QObject::tr("Parts"), partColumns);
}

QWidget* consumablesTable(Desk& desk) {
    return plainTable<Consumable>(desk, QObject::tr("Consumables"), consumableColumns);
}

QWidget* ratesTable(Desk& desk) {
    return tableOfEach<LabourRate, &LabourRate::task>(
        desk, QObject::tr("Labour rates"), rateColumns);
}

QWidget* factorsTable(Desk& desk) {
    return tableOfEach<Factor, &Factor::condition>(desk, QObject::tr("Factors"), factorColumns);
}

QWidget* piecePricesTable(Desk& desk) {
    return tableOfEach<PiecePrice, &PiecePrice::task>(
        desk, QObject::tr("Piece prices"), piecePriceColumns);
}

QWidget* crewTable(Desk& desk) {
    return plainTable<CrewMember>(desk, QObject::tr("Crew"), crewColumns);
}

QWidget* burdenTable(Desk& desk) {
    return plainTable<Burden>(desk, QObject::tr("Burden"), burdenColumns);
}

QWidget* buildersTable(Desk& desk) {
    return plainTable<Builder>(desk, QObject::tr("Builders"), builderColumns);
}

QWidget* planSetsTable(Desk& desk) {
    TableSpec<PlanSet> spec;
    spec.name = QObject::tr("Plan sets");
    spec.columns = planSetColumns;
    spec.rows = [&desk] {
        std::vector<PlanSet> sets;
        for (const auto& [id, set] : desk.book().jobs.of<PlanSet>())
            sets.push_back(set);
        return sets;
    };
    spec.check = [](const PlanSet& set) -> Result<void> {
        return set.name.empty() ? badInput("A plan set needs a name.") : Result<void>();
    };
    spec.emptyHint = QObject::tr("Plan sets come with the plans that are begun or brought in.");
    return bookTable(desk, std::move(spec));
}

QWidget* offcutsTable(Desk& desk) {
    return plainTable<Offcut>(desk, QObject::tr("Offcut rack"), offcutColumns);
}

} // namespace miterbook
