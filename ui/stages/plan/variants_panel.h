// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <QWidget>

namespace miterbook {

class Desk;
class TablePanel;
class VariantPrices;
template <class Row>
class TableModel;

/// The elevations and options of a plan by name, and the profiles that the current one swaps.
class VariantsPanel final : public QWidget {
    Q_OBJECT
public:
    explicit VariantsPanel(Desk& desk, QWidget* parent = nullptr);

    void showPlan(Id<Plan> plan);

private:
    void makeVariants();
    void makeSwaps();
    void showCurrent();

    Desk& m_desk;
    Id<Plan> m_plan;
    Id<Variant> m_current;
    TableModel<Variant>* m_variants = nullptr;
    TableModel<Swap>* m_swaps = nullptr;
    TablePanel* m_left = nullptr;
    TablePanel* m_right = nullptr;
    VariantPrices* m_prices;
};

} // namespace miterbook
