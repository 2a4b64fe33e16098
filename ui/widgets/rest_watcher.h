// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QEvent>
#include <QWidget>

#include <functional>

namespace miterbook {

/// Tells when a widget that has no signal for it is left: a text of several lines is one gesture,
/// made when the cursor goes elsewhere.
class RestWatcher final : public QObject {
public:
    /// Lives as long as the widget.
    RestWatcher(QWidget* widget, std::function<void()> left)
        : QObject(widget)
        , m_left(std::move(left)) {
        widget->installEventFilter(this);
    }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::FocusOut)
            m_left();
        return false;
    }

private:
    std::function<void()> m_left;
};

} // namespace miterbook
