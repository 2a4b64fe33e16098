// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/variant_prices.h"

#include "basics/number_text.h"
#include "desk/desk.h"
#include "desk/text.h"
#include "job/figure_changes.h"
#include "widgets/plain_text.h"
#include "widgets/seen_refresh.h"

#include <QCoreApplication>
#include <QLabel>
#include <QPointer>
#include <QThreadPool>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr int restBefore = 400; // milliseconds

QString signedMoney(Money money, const QString& currency) {
    const bool less = money < Money();
    const Money size = less ? Money() - money : money;
    return (less ? QStringLiteral("\u2212") : QStringLiteral("+"))
        + text(formatMoney(size, utf8(currency)));
}

QString columnText(const PlanPrices& prices, std::size_t column, const QString& currency) {
    const PlanPrices::Column& each = prices.columns[column];
    const QString name = column == 0 ? QObject::tr("As drawn")
                                     : QObject::tr("Elevation %1").arg(text(each.name));
    QString said = name + QLatin1Char(' ') + text(formatMoney(each.price, utf8(currency)));
    if (column > 0)
        said += QStringLiteral(" (")
            + signedMoney(each.price - prices.columns.front().price, currency) + QLatin1Char(')');
    return said;
}

} // namespace

QString optionText(
    const PlanPrices& prices, const PlanPrices::Option& option, const QString& sign) {
    QString said = text(option.name);
    for (std::size_t column = 0; column < option.changes.size(); ++column) {
        if (column == 0)
            said += QStringLiteral(": ") + signedMoney(option.changes[0], sign);
        else if (option.changes[column] != option.changes[0])
            said += QObject::tr("; with elevation %1 %2")
                        .arg(text(prices.columns[column].name),
                            signedMoney(option.changes[column], sign));
    }
    return said;
}

VariantPrices::VariantPrices(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_said(plainLabel({})) {
    m_said->setWordWrap(true);
    m_said->setAccessibleDescription(tr("What elevations and options add to the price"));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_said);
    m_rest.setSingleShot(true);
    m_rest.setInterval(restBefore);
    connect(&m_rest, &QTimer::timeout, this, &VariantPrices::reckon);
    auto* seen = new SeenRefresh(this, [this] { want(); });
    connect(&desk, &Desk::changed, seen, [seen](const Changes& changes) {
        if (alterFigures(changes))
            seen->want();
    });
}

QString VariantPrices::said() const {
    return m_said->text();
}

void VariantPrices::showPlan(Id<Plan> plan) {
    if (plan == m_plan)
        return;
    m_plan = plan;
    ++m_run;
    m_said->clear();
    want();
}

void VariantPrices::want() {
    if (m_plan && !m_desk.book().sheet(m_plan).of<Variant>().empty())
        m_rest.start();
    else
        m_said->clear();
}

void VariantPrices::reckon() {
    if (!isVisible())
        return;
    QPointer<VariantPrices> self(this);
    QThreadPool::globalInstance()->start(
        [self, run = ++m_run, book = m_desk.book(), plan = m_plan] {
            const PriceBook prices = pricesFor(book, plan);
            const PlanPrices made = planPrices(book, plan,
                [&](const StickNeed& need) { return planSticks(need, prices, Effort::quick); });
            QMetaObject::invokeMethod(
                qApp,
                [self, run, made] {
                    if (self)
                        self->take(run, made);
                },
                Qt::QueuedConnection);
        });
}

void VariantPrices::take(int run, const PlanPrices& prices) {
    if (run != m_run || prices.columns.empty())
        return;
    const QString sign = text(m_desk.book().prices.shop().currency);
    QStringList columns;
    for (std::size_t column = 0; column < prices.columns.size(); ++column)
        columns << columnText(prices, column, sign);
    QStringList lines{columns.join(QStringLiteral("   "))};
    for (const PlanPrices::Option& option : prices.options)
        lines << optionText(prices, option, sign);
    m_said->setText(lines.join(QLatin1Char('\n')));
    m_said->setMinimumHeight(m_said->fontMetrics().lineSpacing() * static_cast<int>(lines.size()));
}

} // namespace miterbook
