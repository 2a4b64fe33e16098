// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/order/what_if_form.h"

#include "basics/amount_text.h"
#include "basics/number_text.h"
#include "desk/text.h"
#include "stages/order/order_rows.h"

#include <QCheckBox>
#include <QComboBox>
#include <QFormLayout>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>

#include <algorithm>

namespace miterbook {

namespace {

Error inField(const QString& field, const Error& error) {
    return badInput(utf8(field) + ": " + error.sentence);
}

} // namespace

WhatIfForm::WhatIfForm(QWidget* parent)
    : QWidget(parent)
    , m_kerf(addLine(tr("Kerf"), {}))
    , m_lengthBox(new QWidget(this))
    , m_lengthRow(new QHBoxLayout(m_lengthBox))
    , m_stick(new QComboBox(this))
    , m_price(addLine(tr("Price of that stick"), {}))
    , m_less(addLine({}, QStringLiteral("0")))
    , m_lessLabel(new QLabel(this)) {
    build();
    sayUnits({});
}

QLineEdit* WhatIfForm::addLine(const QString& name, const QString& hint) {
    auto* line = new QLineEdit(this);
    line->setAccessibleName(name);
    line->setPlaceholderText(hint);
    line->setClearButtonEnabled(true);
    line->setMaximumWidth(line->fontMetrics().horizontalAdvance(QLatin1Char('0')) * 14);
    connect(line, &QLineEdit::textEdited, this, &WhatIfForm::edited);
    connect(line, &QLineEdit::textChanged, this, [this, line](const QString& now) {
        if (now.isEmpty() && !line->isModified())
            Q_EMIT edited(); // the clear button
    });
    return line;
}

void WhatIfForm::build() {
    m_lengthRow->setContentsMargins(0, 0, 0, 0);
    m_stick->setAccessibleName(tr("Stick at another price"));
    connect(m_stick, &QComboBox::activated, this, &WhatIfForm::edited);
    auto* offer = new QHBoxLayout;
    offer->addWidget(m_stick);
    offer->addWidget(new QLabel(tr("at"), this));
    offer->addWidget(m_price);
    offer->addStretch(1);
    auto* form = new QFormLayout(this);
    form->setContentsMargins(0, 0, 0, 0);
    form->addRow(tr("&Kerf"), m_kerf);
    form->addRow(tr("Lengths at the yard today"), m_lengthBox);
    form->addRow(tr("&One stick at another price"), offer);
    form->addRow(m_lessLabel, m_less);
    m_lessLabel->setBuddy(m_less);
    if (auto* label = qobject_cast<QLabel*>(form->labelForField(offer)))
        label->setBuddy(m_stick);
}

void WhatIfForm::sayUnits(const Shop& shop) {
    m_written = shop.unit;
    const bool metric = m_written == LengthUnit::millimetres;
    m_lessLabel->setText(metric ? tr("&Buy so many metres less") : tr("&Buy so many feet less"));
    m_less->setAccessibleName(metric ? tr("Metres less") : tr("Feet less"));
}

void WhatIfForm::offer(const JobFigures& figures, const PriceBook& prices) {
    sayUnits(prices.shop());
    m_kerf->setPlaceholderText(text(formatLength(prices.practice().kerf, prices.shop().lengths())));
    std::vector<Length> lengths;
    std::vector<Choice> sticks;
    for (const StickPlan& plan : figures.sticks) {
        for (const Stick& stick : prices.stockedSticks(plan.profile)) {
            lengths.push_back(stick.length);
            sticks.push_back({plan.profile, stick.length});
        }
    }
    std::ranges::sort(lengths);
    lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
    offerLengths(lengths, prices.shop());
    offerSticks(sticks, prices);
}

void WhatIfForm::offerLengths(const std::vector<Length>& lengths, const Shop& shop) {
    std::vector<Length> present;
    for (const auto& [length, box] : m_lengths)
        present.push_back(length);
    if (present == lengths)
        return;
    while (QLayoutItem* item = m_lengthRow->takeAt(0)) {
        delete item->widget();
        delete item;
    }
    m_lengths.clear();
    for (const Length length : lengths) {
        const QString name = stickText(length, shop);
        auto* box = new QCheckBox(name, m_lengthBox);
        box->setChecked(true);
        box->setAccessibleName(tr("The yard has %1 today").arg(name));
        connect(box, &QCheckBox::toggled, this, &WhatIfForm::edited);
        m_lengthRow->addWidget(box);
        m_lengths.emplace_back(length, box);
    }
    m_lengthRow->addStretch(1);
}

void WhatIfForm::offerSticks(const std::vector<Choice>& sticks, const PriceBook& prices) {
    if (m_sticks == sticks)
        return;
    m_sticks = sticks;
    m_stick->clear();
    for (const Choice& stick : sticks)
        m_stick->addItem(tr("%1, %2").arg(
            text(prices.profileName(stick.profile)), stickText(stick.length, prices.shop())));
}

Result<WhatIf> WhatIfForm::whatIf() const {
    WhatIf whatIf;
    if (const QString typed = m_kerf->text().trimmed(); !typed.isEmpty()) {
        const auto kerf = parseLength(utf8(typed), m_written);
        if (!kerf)
            return inField(tr("Kerf"), kerf.error());
        if (*kerf < Length() || *kerf > Length::sixteenths(8))
            return badInput(utf8(
                tr("Kerf: a cut takes between 0 and %1.")
                    .arg(m_written == LengthUnit::millimetres ? tr("12.7 mm") : tr("1/2 in"))));
        whatIf.kerf = *kerf;
    }
    for (const auto& [length, box] : m_lengths) {
        if (!box->isChecked())
            whatIf.outOfStock.push_back(length);
    }
    if (const auto read = readOffer(whatIf); !read)
        return read.error();
    if (const QString typed = m_less->text().trimmed(); !typed.isEmpty()) {
        const bool metric = m_written == LengthUnit::millimetres;
        const auto less = parseWhole(
            utf8(typed), metric ? "metres" : "feet", 0, metric ? 30'000 : 100'000);
        if (!less)
            return inField(m_less->accessibleName(), less.error());
        whatIf.less = runOne(m_written) * *less;
    }
    return whatIf;
}

Result<void> WhatIfForm::readOffer(WhatIf& whatIf) const {
    const QString typed = m_price->text().trimmed();
    const int at = m_stick->currentIndex();
    if (typed.isEmpty() || at < 0)
        return {};
    const auto price = parseMoney(utf8(typed));
    if (!price)
        return inField(tr("Price of that stick"), price.error());
    if (*price <= Money())
        return badInput(utf8(tr("Price of that stick: more than 0.")));
    const Choice& stick = m_sticks[static_cast<std::size_t>(at)];
    whatIf.offer = WhatIf::Offer{stick.profile, stick.length, *price};
    return {};
}

void WhatIfForm::clear() {
    const QSignalBlocker quiet(this);
    for (QLineEdit* line : {m_kerf, m_price, m_less})
        line->clear();
    for (const auto& [length, box] : m_lengths)
        box->setChecked(true);
}

} // namespace miterbook
