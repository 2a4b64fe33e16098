// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/spoken_role.h"

#include <QAccessibleWidget>
#include <QVariant>

namespace miterbook {

namespace {

const char* const spokenRole = "miterbookSpokenRole";

/// Qt asks with the names of the widget's class and of each class that it derives from.
QAccessibleInterface* spokenWidget(const QString&, QObject* object) {
    auto* widget = qobject_cast<QWidget*>(object);
    const QVariant role = widget ? widget->property(spokenRole) : QVariant();
    return role.isValid() ? new QAccessibleWidget(widget, QAccessible::Role(role.toInt()))
                          : nullptr;
}

} // namespace

void speakAs(QWidget& widget, QAccessible::Role role) {
    static const bool installed = [] {
        QAccessible::installFactory(spokenWidget);
        return true;
    }();
    (void)installed;
    widget.setProperty(spokenRole, int(role));
}

} // namespace miterbook
