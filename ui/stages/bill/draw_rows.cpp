// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bill/draw_rows.h"

#include "stages/bill/bill_desk.h"
#include "widgets/columns.h"

#include <algorithm>

namespace miterbook {

namespace {

constexpr Column<DrawRow> drawTable[] = {
    Column<DrawRow>{.title = QT_TRANSLATE_NOOP("Column", "Work"),
        .read = [](const DrawRow& row, const Book&) { return text(row.label); }},
    moneyColumn<&DrawRow::agreed>(QT_TRANSLATE_NOOP("Column", "Agreed"))
        .sum()
        .editedBy([](DrawRow& row, const QString& typed, const Book&) -> Result<void> {
            if (!row.isWork())
                return badInput("The price of an extra is set under Extras.");
            return putInto<&DrawRow::agreed>(row, parseMoney(utf8(typed)));
        }),
    percentColumn<&DrawRow::done>(QT_TRANSLATE_NOOP("Column", "Done"))
        .editedBy([](DrawRow& row, const QString& typed, const Book&) -> Result<void> {
            if (!row.isWork())
                return badInput("An extra is billed when it is done; say so under Extras.");
            if (!row.byWork)
                return badInput("This house is billed by stage or on completion: give the day on "
                                "which that was reached.");
            return putInto<&DrawRow::done>(row, parsePercent(utf8(typed)));
        }),
    moneyColumn<&DrawRow::billed>(QT_TRANSLATE_NOOP("Column", "Billed before")).sum().computed(),
    Column<DrawRow>{.title = QT_TRANSLATE_NOOP("Column", "This draw"),
        .kind = CellKind::money,
        .number = [](const DrawRow& row) { return row.now().cents(); },
        .write
        = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); },
        .whereFrom =
            [](const DrawRow&, const Book&) {
                return QCoreApplication::translate(
                    "Column", "What is done of the agreed price, less what was billed before.");
            },
        .summed = true},
};

constexpr Column<Contract> termTable[] = {
    dateColumn<&Contract::date>(QT_TRANSLATE_NOOP("Column", "Agreed on")),
    textColumn<&Contract::purchaseOrder>(QT_TRANSLATE_NOOP("Column", "Purchase order")),
    wordColumn<&Contract::drawBy>(QT_TRANSLATE_NOOP("Column", "Billed")),
    percentColumn<&Contract::retainage>(QT_TRANSLATE_NOOP("Column", "Retainage")),
    percentColumn<&Contract::tax>(QT_TRANSLATE_NOOP("Column", "Sales tax")),
    wholeColumn<&Contract::dueDays, 0, 3660>(QT_TRANSLATE_NOOP("Column", "Due after, days")),
    dateColumn<&Contract::completed>(QT_TRANSLATE_NOOP("Column", "Completed on")),
};

constexpr Column<ContractStage> stageTable[] = {
    textColumn<&ContractStage::name>(QT_TRANSLATE_NOOP("Column", "Stage")),
    percentColumn<&ContractStage::share>(QT_TRANSLATE_NOOP("Column", "Share")).sum(),
    dateColumn<&ContractStage::reached>(QT_TRANSLATE_NOOP("Column", "Reached on")),
};

} // namespace

std::span<const Column<DrawRow>> drawColumns() {
    return drawTable;
}

std::span<const Column<Contract>> termColumns() {
    return termTable;
}

std::span<const Column<ContractStage>> stageColumns() {
    return stageTable;
}

std::vector<DrawRow> drawRows(const BillDesk& bill) {
    std::vector<DrawRow> rows;
    const Contract* contract = bill.contract();
    if (!contract)
        return rows;
    const auto& schedule = bill.billing().schedule;
    const auto progress = progressOf(*contract, schedule, extrasOf(bill.book(), contract->house));
    const auto billed = billedByLine(bill.billing().bills);
    for (const ValueLine& line : schedule) {
        DrawRow row{line.key, line.label, line.amount, {}, {}, contract->drawBy == DrawBy::work};
        const auto done = std::ranges::find(progress, line.key, &ValueProgress::key);
        if (done != progress.end())
            row.done = done->toDate;
        if (const auto before = billed.find(line.key); before != billed.end())
            row.billed = before->second;
        rows.push_back(std::move(row));
    }
    return rows;
}

} // namespace miterbook
