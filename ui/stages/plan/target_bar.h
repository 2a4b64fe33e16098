// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/variant_rows.h"

#include <QWidget>

class QComboBox;
class QLabel;

namespace miterbook {

class Desk;

/// Where what is typed goes: into the base plan, or into one elevation or option. Not shown while a
/// plan has none.
class TargetBar final : public QWidget {
    Q_OBJECT
public:
    explicit TargetBar(Desk& desk, QWidget* parent = nullptr);

    void showPlan(Id<Plan> plan);
    const EditTarget& target() const { return m_target; }
    /// As if chosen by hand; none: the base plan.
    void choose(Id<Variant> variant);

Q_SIGNALS:
    void chosen(const miterbook::EditTarget& target);

private:
    void fill();
    void take();

    Desk& m_desk;
    EditTarget m_target;
    QComboBox* m_choice;
    QLabel* m_hint;
};

} // namespace miterbook
