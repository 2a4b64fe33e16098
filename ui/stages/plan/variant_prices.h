// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/price_sheet.h"

#include <QString>
#include <QTimer>
#include <QWidget>

class QLabel;

namespace miterbook {

class Desk;

/// What a plan costs under each elevation and what each option adds or takes off, reckoned on
/// another thread while somebody looks: a whole estimate for each.
class VariantPrices final : public QWidget {
    Q_OBJECT
public:
    explicit VariantPrices(Desk& desk, QWidget* parent = nullptr);

    void showPlan(Id<Plan> plan);
    QString said() const;

private:
    void want();
    void reckon();
    void take(int run, const PlanPrices& prices);

    Desk& m_desk;
    Id<Plan> m_plan;
    QTimer m_rest; ///< until nobody has typed for a moment
    QLabel* m_said;
    int m_run = 0;
};

/// "Crown pack: +$980.00; with elevation B +$1,010.00".
QString optionText(const PlanPrices& prices, const PlanPrices::Option& option, const QString& sign);

} // namespace miterbook
