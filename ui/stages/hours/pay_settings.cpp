// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/pay_settings.h"

#include "hours/done_units.h"
#include "hours/hours_checks.h"
#include "io/hours_words.h"
#include "stages/hours/week_columns.h"
#include "widgets/columns.h"
#include "widgets/plain_text.h"
#include "widgets/record_form.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QLabel>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr Column<PayTerms> overtimeColumn{
    .title = QT_TRANSLATE_NOOP("Column", "Overtime after, hours a week"),
    .kind = CellKind::number,
    .edit =
        [](PayTerms& terms, const QString& typed, const Book&) {
            return putInto<&PayTerms::overtimeAfter>(terms, parseHours(utf8(typed)));
        },
    .number = [](const PayTerms& terms) { return terms.overtimeAfter.minutes(); },
    .write
    = [](std::int64_t minutes, const Book&) { return text(formatHours(Hours::minutes(minutes))); }};

constexpr Column<PayTerms> termColumns[] = {
    wordColumn<&PayTerms::weekStart>(QT_TRANSLATE_NOOP("Column", "The week begins on")),
    overtimeColumn,
    percentColumn<&PayTerms::overtimeFactor>(
        QT_TRANSLATE_NOOP("Column", "Overtime is paid at, of the straight rate")),
    checkColumn<&PayTerms::overtimeOnPieces>(
        QT_TRANSLATE_NOOP("Column", "Overtime extra on piece pay")),
};

/// Somebody of the crew; empty is everybody where a row may be for all.
template <class Row, bool everybody>
constexpr Column<Row> whoColumn() {
    return {.title = QT_TRANSLATE_NOOP("Column", "Who"),
        .kind = CellKind::choice,
        .read =
            [](const Row& row, const Book& book) {
                return row.person || !everybody
                    ? personText(row.person, book)
                    : QCoreApplication::translate("Column", "everybody");
            },
        .edit = [](Row& row, const QString& typed, const Book& book) -> Result<void> {
            if (everybody && (typed.trimmed().isEmpty() || typed == QLatin1String("everybody"))) {
                row.person = {};
                return {};
            }
            const auto person = personCalled(utf8(typed.trimmed()), book.prices);
            if (!person)
                return person.error();
            row.person = *person;
            return {};
        },
        .choices =
            [](const Row&, const Book& book) {
                QStringList names;
                if (everybody)
                    names << QStringLiteral("everybody");
                for (const auto& [id, member] : book.prices.of<CrewMember>())
                    names << text(member.name);
                return names;
            }};
}

constexpr Column<CrewPay> basisColumns[] = {
    whoColumn<CrewPay, false>(),
    wordColumn<&CrewPay::basis>(QT_TRANSLATE_NOOP("Column", "Paid")),
};

Unit doneUnitOfRate(const PieceRate& rate) {
    return doneUnit(rate.work, rate.task);
}

constexpr Column<PieceRate> rateOfPieces[] = {
    whoColumn<PieceRate, true>(),
    wordColumn<&PieceRate::work>(QT_TRANSLATE_NOOP("Column", "Piece of work")),
    taskColumn<&PieceRate::task>(QT_TRANSLATE_NOOP("Column", "Task")),
    priceOfUnitColumn<&PieceRate::pay, doneUnitOfRate>(QT_TRANSLATE_NOOP("Column", "Pay for one")),
    Column<PieceRate>{.title = QT_TRANSLATE_NOOP("Column", "Unit"),
        .read =
            [](const PieceRate& rate, const Book& book) {
                return text(unitText(doneUnitOfRate(rate), book.prices.shop().unit));
            }},
};

template <class Row>
QWidget* settingTable(Desk& desk, const QString& name, std::span<const Column<Row>> columns,
    Result<void> (*check)(const Row&), QWidget* parent) {
    TableSpec<Row> spec;
    spec.name = name;
    spec.columns = columns;
    spec.rows = [&desk] {
        std::vector<Row> rows;
        for (const auto& [id, row] : desk.book().jobs.template of<Row>())
            rows.push_back(row);
        return rows;
    };
    spec.blank = [](int) { return Row(); };
    spec.check = check;
    return new TablePanel(*new TableModel<Row>(desk, std::move(spec), parent));
}

TableModelBase* termsModel(Desk& desk, QObject* parent) {
    TableSpec<PayTerms> spec;
    spec.name = PaySettings::tr("Pay");
    spec.columns = termColumns;
    spec.rows = [&desk] { return std::vector<PayTerms>{desk.book().payTerms()}; };
    spec.check = checkPayTerms;
    spec.title = [](const PayTerms&) { return std::string(Describe<PayTerms>::noun); };
    return new TableModel<PayTerms>(desk, std::move(spec), parent);
}

} // namespace

PaySettings::PaySettings(Desk& desk, QWidget* parent)
    : QWidget(parent) {
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    auto* form = new RecordForm(*termsModel(desk, this));
    form->setAccessibleName(tr("How the crew is paid"));
    layout->addWidget(form);
    layout->addWidget(headLabel(tr("Who is paid by the piece")));
    layout->addWidget(
        settingTable<CrewPay>(desk, tr("Basis of pay"), basisColumns, checkCrewPay, this), 1);
    layout->addWidget(headLabel(tr("What a piece brings")));
    layout->addWidget(
        settingTable<PieceRate>(desk, tr("Piece rates"), rateOfPieces, checkPieceRate, this), 1);
}

} // namespace miterbook
