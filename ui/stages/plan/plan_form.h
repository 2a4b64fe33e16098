// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

#include <QScrollArea>

namespace miterbook {

class Desk;
template <class Row>
class TableModel;

/// The plan's own name, floor area and the profiles its openings and rooms use unless they name
/// one.
class PlanForm final : public QScrollArea {
    Q_OBJECT
public:
    explicit PlanForm(Desk& desk, QWidget* parent = nullptr);

    void showPlan(Id<Plan> plan);

private:
    Desk& m_desk;
    Id<Plan> m_plan;
    TableModel<Plan>* m_model;
};

} // namespace miterbook
