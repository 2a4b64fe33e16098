// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/differences_menu.h"

#include "desk/desk.h"
#include "desk/text.h"

#include <QAction>
#include <QMenu>

#include <algorithm>

namespace miterbook {

DifferencesMenu::DifferencesMenu(Desk& desk, QWidget* parent)
    : QToolButton(parent)
    , m_desk(desk)
    , m_menu(new QMenu(this)) {
    setAccessibleName(tr("Drawn with elevation and options"));
    setToolTip(tr("Which elevation and options the drawing, the takeoff and the price are looked "
                  "at with"));
    setText(tr("Drawn with"));
    setMenu(m_menu);
    setPopupMode(QToolButton::InstantPopup);
}

void DifferencesMenu::fill(Id<Plan> plan, const std::vector<Id<Variant>>& seen) {
    // Later: this may be called by one of the actions.
    for (QAction* action : m_menu->actions()) {
        m_menu->removeAction(action);
        action->deleteLater();
    }
    for (const auto& [id, variant] : m_desk.book().sheet(plan).of<Variant>()) {
        QAction* action = m_menu->addAction(menuText(
            miterbook::text(word(variant.kind)) + QChar(u' ') + miterbook::text(variant.name)));
        action->setCheckable(true);
        action->setChecked(std::ranges::count(seen, id) > 0);
        connect(action, &QAction::triggered, this,
            [this, variant = id](bool on) { Q_EMIT switched(variant, on); });
    }
    m_needed = !m_menu->isEmpty();
    setText(seen.empty() ? tr("Drawn with") : tr("Drawn with (%1)").arg(seen.size()));
}

} // namespace miterbook
