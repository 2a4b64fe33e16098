// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/variant_rows.h"

#include <QToolButton>

class QMenu;

namespace miterbook {

class Desk;

/// Which elevation and options the drawing is looked at with, each to be switched on and off.
class DifferencesMenu final : public QToolButton {
    Q_OBJECT
public:
    explicit DifferencesMenu(Desk& desk, QWidget* parent = nullptr);

    /// Those of the plan; not shown where it has none.
    void fill(Id<Plan> plan, const std::vector<Id<Variant>>& seen);
    bool isNeeded() const { return m_needed; }

Q_SIGNALS:
    void switched(miterbook::Id<miterbook::Variant> variant, bool on);

private:
    Desk& m_desk;
    QMenu* m_menu;
    bool m_needed = false;
};

} // namespace miterbook
