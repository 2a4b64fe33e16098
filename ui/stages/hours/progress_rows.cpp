// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/progress_rows.h"

#include "basics/amount_text.h"
#include "hours/done_units.h"
#include "hours/hours_checks.h"
#include "job/say_done.h"
#include "widgets/columns.h"

namespace miterbook {

namespace {

QString said(const char* words) {
    return QCoreApplication::translate("Column", words);
}

QString notKnown() {
    return said(QT_TRANSLATE_NOOP("Column", "not known"));
}

template <Hours (*Get)(const ProgressRow&)>
constexpr Column<ProgressRow> hoursOf(const char* title) {
    return {.title = title,
        .kind = CellKind::number,
        .number = [](const ProgressRow& row) { return Get(row).minutes(); },
        .write = [](std::int64_t minutes,
                     const Book&) { return text(formatHours(Hours::minutes(minutes))); }};
}

template <Quantity (*Get)(const ProgressRow&)>
constexpr Column<ProgressRow> unitsOf(const char* title) {
    return {.title = title,
        .kind = CellKind::number,
        .number = [](const ProgressRow& row) { return Get(row).thousandths(); },
        .write = [](std::int64_t value,
                     const Book&) { return text(formatQuantity(Quantity::thousandths(value))); },
        .applies = [](const ProgressRow& row) { return !row.all; }};
}

Hours bidOf(const ProgressRow& row) {
    return row.work.bid;
}
Hours usedOf(const ProgressRow& row) {
    return row.work.used;
}
Hours forecastOf(const ProgressRow& row) {
    return row.work.forecast;
}
Hours overOf(const ProgressRow& row) {
    return row.over();
}
Quantity unitsDoneOf(const ProgressRow& row) {
    return row.work.unitsDone;
}
Quantity unitsBidOf(const ProgressRow& row) {
    return row.work.unitsBid;
}

QString signedHours(std::int64_t minutes, const Book&) {
    const QString hours = text(formatHours(Hours::minutes(minutes)));
    return minutes > 0 ? u'+' + hours : hours;
}

std::int64_t toProfit(const ProgressRow& row) {
    return -roundedQuotient(Wide(row.over().minutes()) * row.crewRate.cents(), 60);
}

QString doneText(const ProgressRow& row, const Book&) {
    const bool known = row.all || row.work.by != DoneBy::unknown;
    return known ? text(formatPercent(row.work.done)) : notKnown();
}

/// Nothing typed takes back what was said.
Result<void> typeDone(ProgressRow& row, const QString& typed, const Book& book) {
    const House* house = book.house(row.house);
    if (row.all || !house) {
        return badInput("What is done of the house follows from its pieces of work; say how much "
                        "of each is done.");
    }
    if (auto can = canSayDone(*house, row.work); !can)
        return can;
    const QString words = typed.trimmed();
    row.work.by = DoneBy::unknown;
    row.work.done = Percent();
    if (words.isEmpty() || words == notKnown())
        return {};
    const auto percent = parsePercent(utf8(words));
    if (!percent)
        return percent.error();
    row.work.by = DoneBy::said;
    row.work.done = *percent;
    return checkWorkDone({{}, row.house, row.work.work, *percent});
}

QString howKnown(const ProgressRow& row, const Book& book) {
    const WorkProgress& work = row.work;
    const Unit unit = doneUnit(work.work);
    const LengthUnit written = book.prices.shop().unit;
    const QString percent = text(formatPercent(work.done));
    if (row.all)
        return said("The shares of the pieces of work, weighted by the hours bid.");
    switch (work.by) {
    case DoneBy::ticks:
        return said("%1 %: the share of which every piece is ticked as hung.").arg(percent);
    case DoneBy::units:
        return said("%1 %: %2 %3 finished of %4 bid.")
            .arg(percent, text(formatQuantity(amountSaid(work.unitsDone, unit, written))),
                text(unitText(unit, written)),
                text(formatQuantity(amountSaid(work.unitsBid, unit, written))));
    case DoneBy::said:
        return said("%1 %, as was typed here. It counts until something is ticked or written down "
                    "as finished.")
            .arg(percent);
    case DoneBy::finished:
        return said("The house is finished.");
    default:
        return said("How much is done is not known: type it here, write down what was finished "
                    "beside the hours, or tick pieces as hung.");
    }
}

QString forecastFrom(const ProgressRow& row, const Book&) {
    if (row.all) {
        return said("With %1 hours of waiting and callbacks, which nobody bids.")
            .arg(text(formatHours(row.lost)));
    }
    switch (row.work.by) {
    case DoneBy::unknown:
        return said("The larger of what was bid and what has been used.");
    case DoneBy::finished:
        return said("The house is finished: it took what it took.");
    default:
        return said("The hours bid at the pace so far, once a tenth is done; before that what was "
                    "used and the rest as bid.");
    }
}

constexpr Column<ProgressRow> progressTable[] = {
    Column<ProgressRow>{.title = QT_TRANSLATE_NOOP("Column", "Piece of work"),
        .read =
            [](const ProgressRow& row, const Book&) {
                return row.all ? said(QT_TRANSLATE_NOOP("Column", "all"))
                               : text(word(row.work.work));
            }},
    hoursOf<bidOf>(QT_TRANSLATE_NOOP("Column", "Bid")),
    hoursOf<usedOf>(QT_TRANSLATE_NOOP("Column", "Used")),
    Column<ProgressRow>{.title = QT_TRANSLATE_NOOP("Column", "Done"),
        .kind = CellKind::percent,
        .read = doneText,
        .edit = typeDone,
        .number = [](const ProgressRow& row) { return row.work.done.basisPoints(); },
        .whereFrom = howKnown},
    unitsOf<unitsDoneOf>(QT_TRANSLATE_NOOP("Column", "Finished")),
    unitsOf<unitsBidOf>(QT_TRANSLATE_NOOP("Column", "Of")),
    hoursOf<forecastOf>(QT_TRANSLATE_NOOP("Column", "At completion")).from(forecastFrom),
    Column<ProgressRow>{.title = QT_TRANSLATE_NOOP("Column", "Over bid"),
        .kind = CellKind::number,
        .number = [](const ProgressRow& row) { return overOf(row).minutes(); },
        .write = signedHours},
    Column<ProgressRow>{.title = QT_TRANSLATE_NOOP("Column", "To profit"),
        .kind = CellKind::money,
        .number = toProfit,
        .write
        = [](std::int64_t cents, const Book&) { return text(formatMoney(Money::cents(cents))); }},
    Column<ProgressRow>{.title = QT_TRANSLATE_NOOP("Column", "Known by"),
        .read = [](const ProgressRow& row,
                    const Book&) { return row.all ? QString() : text(word(row.work.by)); }},
};

} // namespace

std::vector<ProgressRow> progressRows(
    Id<House> house, const HouseProgress& progress, Money crewRate) {
    std::vector<ProgressRow> rows;
    for (const WorkProgress& work : progress.works)
        rows.push_back({house, work, crewRate, {}, false});
    ProgressRow all{house, {}, crewRate, progress.lost, true};
    all.work.bid = progress.bid;
    all.work.used = progress.used;
    all.work.forecast = progress.forecast;
    all.work.done = progress.done;
    rows.push_back(all);
    return rows;
}

std::span<const Column<ProgressRow>> progressColumns() {
    return progressTable;
}

} // namespace miterbook
