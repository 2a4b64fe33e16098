// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/money_columns.h"

#include "widgets/columns.h"

namespace miterbook {

namespace {

template <class Row, Money (*Get)(const Row&)>
constexpr Column<Row> readMoney(const char* title) {
    return Column<Row>{.title = title,
        .kind = CellKind::money,
        .number = [](const Row& row) { return Get(row).cents(); },
        .write
        = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
        .summed = true};
}

template <std::size_t Bucket>
Money inBucket(const AgingRow& row) {
    return row.line.buckets.at(Bucket);
}

Money creditOf(const AgingRow& row) {
    return -row.line.credit;
}

Money owedBy(const AgingRow& row) {
    return row.line.owed();
}

/// Said in words beside the number.
QString lateText(const AgingRow& row, const Book&) {
    return row.late == 0 ? QString()
                         : QCoreApplication::translate("Column", "LATE: %1").arg(row.late);
}

constexpr Column<AgingRow> agingTable[] = {
    Column<AgingRow>{.title = QT_TRANSLATE_NOOP("Column", "Builder"),
        .read = [](const AgingRow& row, const Book&) { return text(row.builder); }},
    readMoney<AgingRow, inBucket<0>>(QT_TRANSLATE_NOOP("Column", "0 to 30 days")),
    readMoney<AgingRow, inBucket<1>>(QT_TRANSLATE_NOOP("Column", "31 to 60")),
    readMoney<AgingRow, inBucket<2>>(QT_TRANSLATE_NOOP("Column", "61 to 90")),
    readMoney<AgingRow, inBucket<3>>(QT_TRANSLATE_NOOP("Column", "over 90")),
    readMoney<AgingRow, creditOf>(QT_TRANSLATE_NOOP("Column", "Credit")),
    readMoney<AgingRow, owedBy>(QT_TRANSLATE_NOOP("Column", "Owed")),
    Column<AgingRow>{.title = QT_TRANSLATE_NOOP("Column", "Past due"), .read = lateText},
};

Money valueOfHouse(const ToBillRow& row) {
    return row.money.value;
}

Money earnedOf(const ToBillRow& row) {
    return row.money.earned;
}

Money workOf(const ToBillRow& row) {
    return row.money.work;
}

Money toBill(const ToBillRow& row) {
    return row.money.unbilled();
}

Money heldOf(const ToBillRow& row) {
    return row.money.retained;
}

Money owedOn(const ToBillRow& row) {
    return row.money.owed;
}

QString approvalText(const ToBillRow& row, const Book&) {
    return row.notApproved == 0
        ? QString()
        : QCoreApplication::translate("Column", "%1 NOT APPROVED").arg(row.notApproved);
}

constexpr Column<ToBillRow> toBillTable[] = {
    Column<ToBillRow>{.title = QT_TRANSLATE_NOOP("Column", "House"),
        .read = [](const ToBillRow& row, const Book&) { return text(row.name); }},
    Column<ToBillRow>{.title = QT_TRANSLATE_NOOP("Column", "Builder"),
        .read = [](const ToBillRow& row, const Book&) { return text(row.builder); }},
    readMoney<ToBillRow, valueOfHouse>(QT_TRANSLATE_NOOP("Column", "Contract and extras")),
    readMoney<ToBillRow, earnedOf>(QT_TRANSLATE_NOOP("Column", "Done")),
    readMoney<ToBillRow, workOf>(QT_TRANSLATE_NOOP("Column", "Billed")),
    readMoney<ToBillRow, toBill>(QT_TRANSLATE_NOOP("Column", "To bill")),
    readMoney<ToBillRow, heldOf>(QT_TRANSLATE_NOOP("Column", "Retained")),
    readMoney<ToBillRow, owedOn>(QT_TRANSLATE_NOOP("Column", "Owed")),
    Column<ToBillRow>{.title = QT_TRANSLATE_NOOP("Column", "Extras"), .read = approvalText},
};

} // namespace

std::span<const Column<AgingRow>> agingColumns() {
    return agingTable;
}

std::span<const Column<ToBillRow>> toBillColumns() {
    return toBillTable;
}

} // namespace miterbook
