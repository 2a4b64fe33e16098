// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/spoken/spoken_tree.h"

#include <QAccessible>
#include <QCheckBox>
#include <QComboBox>
#include <QGraphicsView>
#include <QLabel>
#include <QLineEdit>
#include <QListView>
#include <QMetaEnum>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QRadioButton>
#include <QRegularExpression>
#include <QSpinBox>
#include <QTabBar>
#include <QTableView>
#include <QToolButton>
#include <QTreeView>
#include <QWidget>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

using Role = QAccessible::Role;

constexpr int cellsLookedAt = 60;

QString nameOf(QAccessibleInterface& spoken) {
    return spoken.text(QAccessible::Name).trimmed();
}

QString roleName(Role role) {
    return QString::fromLatin1(QMetaEnum::fromType<QAccessible::Role>().valueToKey(role));
}

/// Roles that say nothing of what can be done with a control.
const std::set<Role> idleRoles{QAccessible::NoRole, QAccessible::Client, QAccessible::Window,
    QAccessible::Pane, QAccessible::LayeredPane, QAccessible::Border, QAccessible::Grouping,
    QAccessible::Whitespace, QAccessible::UserRole};

/// The roles that a widget may have by what it is; empty: any that says something.
std::set<Role> rightRoles(const QObject* object) {
    if (qobject_cast<const QTabBar*>(object))
        return {QAccessible::PageTabList};
    if (qobject_cast<const QTableView*>(object))
        return {QAccessible::Table};
    if (qobject_cast<const QTreeView*>(object))
        return {QAccessible::Tree};
    if (qobject_cast<const QListView*>(object))
        return {QAccessible::List};
    if (qobject_cast<const QComboBox*>(object))
        return {QAccessible::ComboBox};
    if (qobject_cast<const QAbstractSpinBox*>(object))
        return {QAccessible::SpinBox};
    if (qobject_cast<const QLineEdit*>(object) || qobject_cast<const QPlainTextEdit*>(object))
        return {QAccessible::EditableText};
    if (qobject_cast<const QCheckBox*>(object))
        return {QAccessible::CheckBox};
    if (qobject_cast<const QRadioButton*>(object))
        return {QAccessible::RadioButton};
    if (qobject_cast<const QAbstractButton*>(object))
        return {QAccessible::Button, QAccessible::ButtonMenu, QAccessible::CheckBox,
            QAccessible::RadioButton};
    if (qobject_cast<const QLabel*>(object))
        return {QAccessible::StaticText, QAccessible::Graphic};
    if (qobject_cast<const QGraphicsView*>(object))
        return {QAccessible::Chart, QAccessible::Document};
    return {};
}

/// A part of another control, which speaks for it: the line of a combo box, of a spin box.
bool isPart(const QObject* object) {
    const auto* widget = qobject_cast<const QWidget*>(object);
    return widget
        && (qobject_cast<const QComboBox*>(widget->parent())
            || qobject_cast<const QAbstractSpinBox*>(widget->parent()));
}

/// Whether the focus stays there. Widgets with a proxy hand it on; a label with nothing on it has
/// nothing to be chosen.
bool takesFocus(const QAccessibleInterface& spoken) {
    const auto* widget = qobject_cast<const QWidget*>(spoken.object());
    if (!widget || !spoken.state().focusable || widget->focusProxy())
        return false;
    const auto* label = qobject_cast<const QLabel*>(widget);
    return !label || !label->text().isEmpty();
}

/// A name of its own would keep what a label shows from being heard.
bool saysItsText(const QLabel& label, const QString& name) {
    static const QRegularExpression apart(u"[\\s,]+"_s);
    const auto words = [](QString text) { return text.remove(u'&').remove(apart); };
    return words(name).contains(words(label.text()));
}

class Walk {
public:
    SpokenTree tree;

    void look(QAccessibleInterface* spoken, const QString& where) {
        if (!spoken || !spoken->isValid() || spoken->state().invisible || isPart(spoken->object()))
            return;
        const QString name = nameOf(*spoken);
        const QString here = where + u" / "_s + (name.isEmpty() ? whatIs(*spoken) : name);
        if (takesFocus(*spoken))
            control(*spoken, here);
        if (const auto* label = qobject_cast<const QLabel*>(spoken->object());
            label && !saysItsText(*label, name))
            tree.faults << here + u": its text is not said: "_s + label->text();
        const bool ofCells = spoken->tableInterface() != nullptr;
        const int children = ofCells ? std::min(spoken->childCount(), cellsLookedAt)
                                     : spoken->childCount();
        for (int i = 0; i < children; ++i) {
            QAccessibleInterface* child = spoken->child(i);
            if (child && child->isValid() && !child->object() && ofCells)
                cell(*child, here);
            else
                look(child, here);
        }
    }

private:
    static QString whatIs(const QAccessibleInterface& spoken) {
        const QObject* object = spoken.object();
        QString words = roleName(spoken.role());
        if (!object)
            return words;
        words += u' ' + QString::fromLatin1(object->metaObject()->className());
        return object->objectName().isEmpty() ? words : words + u' ' + object->objectName();
    }

    void control(QAccessibleInterface& spoken, const QString& here) {
        ++tree.controls;
        const Role role = spoken.role();
        tree.roles.insert(roleName(role));
        if (nameOf(spoken).isEmpty())
            tree.faults << here + u": no name"_s;
        const std::set<Role> right = rightRoles(spoken.object());
        if (right.empty() ? idleRoles.contains(role) : !right.contains(role))
            tree.faults << here + u": its role is "_s + roleName(role) + u" ("_s + whatIs(spoken)
                    + u')';
    }

    void cell(QAccessibleInterface& spoken, const QString& here) {
        ++tree.cells;
        static const std::set<Role> right{QAccessible::Cell, QAccessible::ColumnHeader,
            QAccessible::RowHeader, QAccessible::ListItem, QAccessible::TreeItem,
            QAccessible::Pane}; // the corner of two headers is a pane
        if (!right.contains(spoken.role()))
            tree.faults << here + u": a cell's role is "_s + roleName(spoken.role());
        if (spoken.role() != QAccessible::Pane && nameOf(spoken).isEmpty())
            tree.faults << here + u": an unnamed "_s + roleName(spoken.role());
    }
};

} // namespace

SpokenTree spokenTree(QWidget& root) {
    Walk walk;
    walk.look(QAccessible::queryAccessibleInterface(&root), {});
    return std::move(walk.tree);
}

} // namespace miterbook
