// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QEvent>
#include <QWidget>

#include <functional>
#include <utility>

namespace miterbook {

/// Fills a page that costs time: at once while somebody sees it, else when it is shown next.
class SeenRefresh final : public QObject {
public:
    /// Lives as long as the page.
    SeenRefresh(QWidget* page, std::function<void()> fill)
        : QObject(page)
        , m_page(page)
        , m_fill(std::move(fill)) {
        page->installEventFilter(this);
    }

    /// What is shown has changed.
    void want() {
        m_wanted = true;
        if (m_page->isVisible())
            fill();
    }

protected:
    bool eventFilter(QObject*, QEvent* event) override {
        if (event->type() == QEvent::Show)
            fill();
        return false;
    }

private:
    void fill() {
        if (std::exchange(m_wanted, false))
            m_fill();
    }

    QWidget* m_page;
    std::function<void()> m_fill;
    bool m_wanted = true; ///< it has never been filled
};

} // namespace miterbook
