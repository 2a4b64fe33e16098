// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/book_forms.h"

#include "book/checks.h"
#include "widgets/columns.h"
#include "widgets/plain_text.h"
#include "widgets/record_form.h"
#include "widgets/scrolled.h"
#include "widgets/table_model.h"
#include "windows/logo_form.h"

#include <QVBoxLayout>

namespace miterbook {

namespace {

Result<void> putDenominator(Shop& shop, const QString& typed, const Book&) {
    const QString word = typed.trimmed();
    const auto number = parseWhole(utf8(word.mid(word.indexOf(u'/') + 1)), "The fraction", 1, 64);
    if (!number)
        return number.error();
    shop.denominator = *number;
    return {};
}

constexpr Column<Shop> fractionColumn{.title = QT_TRANSLATE_NOOP("Column", "Fractions shown"),
    .kind = CellKind::choice,
    .read
    = [](const Shop& shop, const Book&) { return QStringLiteral("1/%1 in").arg(shop.denominator); },
    .edit =
        [](Shop& shop, const QString& typed, const Book& book) {
            return putDenominator(shop, QString(typed).remove(QStringLiteral(" in")), book);
        },
    .choices =
        [](const Shop&, const Book&) {
            return QStringList{QStringLiteral("1/16 in"), QStringLiteral("1/32 in")};
        }};

constexpr Column<Shop> shopColumns[] = {
    textColumn<&Shop::name>(QT_TRANSLATE_NOOP("Column", "Shop")),
    linesColumn<&Shop::address>(QT_TRANSLATE_NOOP("Column", "Address")),
    textColumn<&Shop::phone>(QT_TRANSLATE_NOOP("Column", "Phone")),
    textColumn<&Shop::email>(QT_TRANSLATE_NOOP("Column", "E-mail")),
    textColumn<&Shop::licence>(QT_TRANSLATE_NOOP("Column", "Contractor licence")),
    textColumn<&Shop::currency>(QT_TRANSLATE_NOOP("Column", "Currency sign")),
    wordColumn<&Shop::unit>(QT_TRANSLATE_NOOP("Column", "Lengths in")),
    fractionColumn,
    wordColumn<&Shop::page>(QT_TRANSLATE_NOOP("Column", "Page size")),
    checkColumn<&Shop::monthFirst>(QT_TRANSLATE_NOOP("Column", "Dates with the month first")),
};

template <Length Practice::*M>
constexpr Column<Practice> setting(const char* title) {
    return lengthColumn<M, Zero::shown>(title);
}

constexpr Column<Practice> practiceColumns[] = {
    setting<&Practice::reveal>(QT_TRANSLATE_NOOP("Column", "Reveal")),
    setting<&Practice::floorGap>(QT_TRANSLATE_NOOP("Column", "Legs held off the floor")),
    setting<&Practice::horn>(QT_TRANSLATE_NOOP("Column", "Stool beyond the casing, each end")),
    setting<&Practice::headOverhang>(QT_TRANSLATE_NOOP("Column", "Butted head beyond the legs")),
    setting<&Practice::returnPiece>(QT_TRANSLATE_NOOP("Column", "Material for one return")),
    setting<&Practice::longSide>(QT_TRANSLATE_NOOP("Column", "A casing side is long from")),
    setting<&Practice::longestLeg>(QT_TRANSLATE_NOOP("Column", "Longest leg the yard has")),
    setting<&Practice::shelfSupport>(QT_TRANSLATE_NOOP("Column", "Largest span of a shelf")),
    setting<&Practice::balusterGap>(QT_TRANSLATE_NOOP("Column", "Largest gap between balusters")),
    setting<&Practice::kerf>(QT_TRANSLATE_NOOP("Column", "Kerf")),
    setting<&Practice::endTrim>(QT_TRANSLATE_NOOP("Column", "Trimmed off each stick")),
    setting<&Practice::scarf>(QT_TRANSLATE_NOOP("Column", "Extra for one splice")),
    setting<&Practice::keepOffcut>(QT_TRANSLATE_NOOP("Column", "Shortest offcut kept")),
    percentColumn<&Practice::offcutWorth>(
        QT_TRANSLATE_NOOP("Column", "An offcut counts for, % of new stick")),
    angleColumn<&Practice::sawSwing>(QT_TRANSLATE_NOOP("Column", "The saw swings, degrees")),
    wholeColumn<&Practice::spareSticks, 0, 100>(
        QT_TRANSLATE_NOOP("Column", "Spare sticks of each profile")),
};

constexpr Column<Terms> termsColumns[] = {
    wordColumn<&Terms::pricing>(QT_TRANSLATE_NOOP("Column", "Bids are priced by")),
    wordColumn<&Terms::profitKind>(QT_TRANSLATE_NOOP("Column", "Profit as")),
    percentColumn<&Terms::profit>(QT_TRANSLATE_NOOP("Column", "Profit")),
    percentColumn<&Terms::overhead>(QT_TRANSLATE_NOOP("Column", "Overhead on cost")),
    percentColumn<&Terms::materialTax>(QT_TRANSLATE_NOOP("Column", "Sales tax paid on material")),
    percentColumn<&Terms::contingency>(
        QT_TRANSLATE_NOOP("Column", "Contingency on labour and material")),
    moneyColumn<&Terms::delivery>(QT_TRANSLATE_NOOP("Column", "Deliveries to a house, in all")),
    wholeColumn<&Terms::hoursPerYear, 1, 10'000>(
        QT_TRANSLATE_NOOP("Column", "Hours one person works a year")),
    wholeColumn<&Terms::tripsPerHouse, 0, 100>(QT_TRANSLATE_NOOP("Column", "Trips to a house")),
    wholeColumn<&Terms::validDays, 0, 3650>(QT_TRANSLATE_NOOP("Column", "A bid stands, days")),
    moneyColumn<&Terms::minimumJob>(QT_TRANSLATE_NOOP("Column", "Minimum job")),
    moneyColumn<&Terms::roundTo>(QT_TRANSLATE_NOOP("Column", "Prices rounded up to a multiple of")),
    moneyColumn<&Terms::hourlyRate>(QT_TRANSLATE_NOOP("Column", "An hour, quoted for extras")),
    checkColumn<&Terms::quoteUnits>(QT_TRANSLATE_NOOP("Column", "Bids quote prices for extras")),
    linesColumn<&Terms::paymentTerms>(QT_TRANSLATE_NOOP("Column", "Payment")),
    linesColumn<&Terms::inclusions>(QT_TRANSLATE_NOOP("Column", "Included")),
    linesColumn<&Terms::exclusions>(QT_TRANSLATE_NOOP("Column", "Not included")),
};

/// The model of a table that has one row, id 1.
template <class Row>
TableModel<Row>* onlyRow(Desk& desk, const QString& name, std::span<const Column<Row>> columns,
    const Row& (PriceBook::*present)() const, QObject* parent) {
    TableSpec<Row> spec;
    spec.name = name;
    spec.columns = columns;
    spec.rows = [&desk, present] { return std::vector<Row>{(desk.book().prices.*present)()}; };
    spec.check = [&desk](const Row& row) { return check(row, desk.book().prices); };
    spec.store = [](EditBuilder& edit, Row row) {
        row.id = Id<Row>(1);
        edit.put(std::move(row));
    };
    spec.title = [](const Row&) { return std::string(Describe<Row>::noun); };
    return new TableModel<Row>(desk, std::move(spec), parent);
}

template <class Row>
QWidget* form(Desk& desk, const QString& name, std::span<const Column<Row>> columns,
    const Row& (PriceBook::*present)() const) {
    auto* model = onlyRow(desk, name, columns, present, nullptr);
    auto* record = new RecordForm(*model);
    model->setParent(record);
    record->setAccessibleName(name);
    return scrolled(record);
}

} // namespace

QWidget* shopForm(Desk& desk) {
    auto* page = new QWidget;
    auto* layout = new QVBoxLayout(page);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(new LogoForm(desk));
    layout->addWidget(hintLabel(QObject::tr(
        "The logo stands on papers from now on. What has been issued keeps the one it had.")));
    layout->addWidget(form<Shop>(desk, QObject::tr("Shop"), shopColumns, &PriceBook::shop), 1);
    return page;
}

QWidget* practiceForm(Desk& desk) {
    return form<Practice>(desk, QObject::tr("Practice"), practiceColumns, &PriceBook::practice);
}

QWidget* termsForm(Desk& desk) {
    return form<Terms>(desk, QObject::tr("Terms"), termsColumns, &PriceBook::terms);
}

} // namespace miterbook
