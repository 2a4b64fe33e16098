// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/bid_setup_form.h"

#include "basics/number_text.h"
#include "desk/desk.h"
#include "desk/text.h"
#include "stages/bid/allowance_table.h"
#include "widgets/column_text.h"
#include "widgets/columns.h"
#include "widgets/table_model_base.h"

#include <QCheckBox>
#include <QComboBox>
#include <QEvent>
#include <QFormLayout>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace miterbook {

namespace {

/// Puts text into a field unless the user is in it.
void fill(QLineEdit* field, const std::string& value) {
    if (field->hasFocus() && field->isModified())
        return;
    field->setText(text(value));
    field->setModified(false);
}

void fill(QPlainTextEdit* field, const std::string& value) {
    if (utf8(field->toPlainText()) != value && !field->hasFocus())
        field->setPlainText(text(value));
}

} // namespace

BidSetupForm::BidSetupForm(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk) {
    auto* column = new QVBoxLayout(this);
    auto* form = new QFormLayout;
    form->setFieldGrowthPolicy(QFormLayout::ExpandingFieldsGrow);
    column->addLayout(form);
    column->addStretch(1);
    m_pricing = addChoice(form, tr("Priced by"), wordsOf<Pricing>());
    m_profitKind = addChoice(form, tr("Profit as"), wordsOf<ProfitKind>());
    m_profit = addLine(form, tr("Profit %"));
    m_overhead = addLine(form, tr("Overhead % of cost"));
    m_contingency = addLine(form, tr("Contingency %"));
    m_delivery = addLine(form, tr("Delivery in all"));
    m_trips = addLine(form, tr("Trips"));
    m_waste = addLine(form, tr("Waste % instead of stick plan"));
    m_waste->setToolTip(tr("0: material is priced from the stick plan"));
    m_date = addLine(form, tr("Prices in force on"));
    m_date->setPlaceholderText(tr("today"));
    m_date->setToolTip(tr("Written as 2026-11-25; empty: prices and burden of today"));
    m_minimum = addLine(form, tr("Minimum job"));
    m_roundTo = addLine(form, tr("Rounded up to a multiple of"));
    m_offerOptions = addCheck(
        form, tr("Offer other options as alternates"), &BidSetup::offerOptions);
    m_quoteUnits = addCheck(form, tr("Quote prices for extras"), &BidSetup::quoteUnits);
    m_onePage = addCheck(form, tr("Summary on one page"), &BidSetup::onePage);
    m_allowances = allowanceTable(
        desk, [this] { return present(); }, this);
    m_scope = addText(form, tr("Scope"));
    m_inclusions = addText(form, tr("Included"));
    m_exclusions = addText(form, tr("Not included"));
    connectNumbers();
    connectRules();
    connectWords();
    connect(&desk, &Desk::changed, this, [this] { refresh(); });
}

QComboBox* BidSetupForm::addChoice(
    QFormLayout* form, const QString& label, const QStringList& words) {
    auto* box = new QComboBox(this);
    box->addItems(words);
    box->setAccessibleName(label);
    form->addRow(label, box);
    return box;
}

QLineEdit* BidSetupForm::addLine(QFormLayout* form, const QString& label) {
    auto* line = new QLineEdit(this);
    line->setAccessibleName(label);
    line->setMaximumWidth(line->fontMetrics().horizontalAdvance(QLatin1Char('0')) * 14);
    form->addRow(label, line);
    return line;
}

QPlainTextEdit* BidSetupForm::addText(QFormLayout* form, const QString& label) {
    auto* box = new QPlainTextEdit(this);
    box->setAccessibleName(label);
    box->setTabChangesFocus(true);
    box->setMaximumHeight(box->fontMetrics().lineSpacing() * 5);
    box->installEventFilter(this);
    form->addRow(label, box);
    return box;
}

QCheckBox* BidSetupForm::addCheck(QFormLayout* form, const QString& words, bool BidSetup::*to) {
    auto* box = new QCheckBox(words, this);
    form->addRow(box);
    connect(box, &QCheckBox::clicked, this, [this, words, to](bool on) {
        change(words + (on ? tr(": yes") : tr(": no")), [&](BidSetup& setup) -> Result<void> {
            setup.*to = on;
            return {};
        });
    });
    return box;
}

void BidSetupForm::connectRules() {
    const auto money = [this](QLineEdit* line, const QString& sentence, Money BidSetup::*to) {
        connect(line, &QLineEdit::editingFinished, this, [this, line, sentence, to] {
            change(sentence, [&](BidSetup& setup) -> Result<void> {
                const QString typed = line->text().trimmed();
                const auto value = typed.isEmpty() ? Money() : parseMoney(utf8(typed));
                if (!value)
                    return value.error();
                setup.*to = *value;
                return {};
            });
        });
    };
    money(m_minimum, tr("Set the minimum job"), &BidSetup::minimum);
    money(m_delivery, tr("Set delivery"), &BidSetup::delivery);
    money(m_roundTo, tr("Set what the price is rounded up to"), &BidSetup::roundTo);
    connect(m_date, &QLineEdit::editingFinished, this, [this] {
        change(tr("Set the day of the prices"), [&](BidSetup& setup) -> Result<void> {
            const auto value = dayIn(m_date->text(), m_desk.book());
            if (!value)
                return value.error();
            setup.date = *value;
            return {};
        });
    });
}

void BidSetupForm::connectNumbers() {
    const auto percent = [this](QLineEdit* line, const QString& sentence, Percent BidSetup::*to) {
        connect(line, &QLineEdit::editingFinished, this, [this, line, sentence, to] {
            change(sentence, [&](BidSetup& setup) -> Result<void> {
                const auto value = parsePercent(utf8(line->text()));
                if (!value)
                    return value.error();
                setup.*to = *value;
                return {};
            });
        });
    };
    percent(m_profit, tr("Set profit"), &BidSetup::profit);
    percent(m_overhead, tr("Set overhead"), &BidSetup::overhead);
    percent(m_contingency, tr("Set contingency"), &BidSetup::contingency);
    percent(m_waste, tr("Set waste"), &BidSetup::waste);
    connect(m_trips, &QLineEdit::editingFinished, this, [this] {
        change(tr("Set trips"), [&](BidSetup& setup) -> Result<void> {
            const auto value = parseWhole(utf8(m_trips->text()), "trips", 0, 100);
            if (!value)
                return value.error();
            setup.trips = *value;
            return {};
        });
    });
}

void BidSetupForm::connectWords() {
    connect(m_pricing, &QComboBox::activated, this, [this](int index) {
        change(tr("Set pricing"), [&](BidSetup& setup) -> Result<void> {
            setup.pricing = Words<Pricing>::list.at(static_cast<std::size_t>(index)).value;
            return {};
        });
    });
    connect(m_profitKind, &QComboBox::activated, this, [this](int index) {
        change(tr("Set profit"), [&](BidSetup& setup) -> Result<void> {
            setup.profitKind = Words<ProfitKind>::list.at(static_cast<std::size_t>(index)).value;
            return {};
        });
    });
}

BidSetup BidSetupForm::present() const {
    const BidSetup* setup = m_desk.book().bidSetup(m_job.plan);
    return setup ? *setup : setupFrom(m_desk.book().prices.terms(), m_job.plan);
}

void BidSetupForm::change(const QString& sentence, const Change& change) {
    if (!m_job)
        return;
    const BidSetup before = present();
    BidSetup after = before;
    if (const auto changed = change(after); !changed) {
        m_desk.refuse(changed.error());
        return;
    }
    if (after == before)
        return;
    if (!after.id)
        after.id = m_desk.ids().next<BidSetup>();
    m_desk.perform(putEdit(m_desk.book(), utf8(sentence), after));
}

bool BidSetupForm::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::FocusOut) {
        if (const auto* box = qobject_cast<const QPlainTextEdit*>(watched))
            takeText(box);
    }
    return QWidget::eventFilter(watched, event);
}

void BidSetupForm::takeText(const QPlainTextEdit* box) {
    change(tr("Revise the bid's words"), [&](BidSetup& setup) -> Result<void> {
        std::string& to = box == m_scope ? setup.scope
            : box == m_inclusions        ? setup.inclusions
                                         : setup.exclusions;
        to = utf8(box->toPlainText());
        return {};
    });
}

void BidSetupForm::showJob(const JobRef& job) {
    m_job = job;
    setEnabled(static_cast<bool>(job));
    m_allowances->setEnabled(static_cast<bool>(job));
    m_allowances->findChild<TableModelBase*>()->refresh();
    refresh();
}

void BidSetupForm::refresh() {
    const BidSetup setup = present();
    m_pricing->setCurrentText(text(word(setup.pricing)));
    m_profitKind->setCurrentText(text(word(setup.profitKind)));
    fill(m_profit, formatPercent(setup.profit));
    fill(m_overhead, formatPercent(setup.overhead));
    fill(m_contingency, formatPercent(setup.contingency));
    fill(m_delivery, setup.delivery == Money() ? std::string() : formatMoney(setup.delivery));
    fill(m_trips, std::to_string(setup.trips));
    fill(m_waste, formatPercent(setup.waste));
    fill(m_date, isoDate(setup.date));
    fill(m_minimum, setup.minimum == Money() ? std::string() : formatMoney(setup.minimum));
    fill(m_roundTo, setup.roundTo == Money() ? std::string() : formatMoney(setup.roundTo));
    m_offerOptions->setChecked(setup.offerOptions);
    m_quoteUnits->setChecked(setup.quoteUnits);
    m_onePage->setChecked(setup.onePage);
    fill(m_scope, setup.scope);
    fill(m_inclusions, setup.inclusions);
    fill(m_exclusions, setup.exclusions);
}

} // namespace miterbook
