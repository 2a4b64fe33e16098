// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/nav_bar.h"

#include "desk/text.h"
#include "widgets/accent.h"
#include "widgets/plain_text.h"

#include <QButtonGroup>
#include <QHBoxLayout>
#include <QPainter>
#include <QToolButton>

namespace miterbook {

namespace {

/// A flat word; the chosen one carries a bar of the accent, so that it is not told by colour alone.
class NavButton final : public QToolButton {
public:
    explicit NavButton(const QString& word) {
        setText(word);
        setCheckable(true);
        setAutoRaise(true);
        setFocusPolicy(Qt::TabFocus);
        QFont bold = font();
        bold.setPointSizeF(bold.pointSizeF() * 1.1);
        setFont(bold);
    }

    QSize sizeHint() const override {
        const int em = fontMetrics().height();
        return {fontMetrics().horizontalAdvance(text()) + 2 * em, 2 * em};
    }

protected:
    void paintEvent(QPaintEvent* event) override {
        QToolButton::paintEvent(event);
        if (!isChecked())
            return;
        QPainter painter(this);
        const int bar = std::max(3, fontMetrics().height() / 6);
        painter.fillRect(0, height() - bar, width(), bar, accentColour(palette()));
    }
};

} // namespace

NavBar::NavBar(const QString& name, QWidget* parent)
    : QWidget(parent)
    , m_buttons(new QButtonGroup(this))
    , m_layout(new QHBoxLayout(this)) {
    setAccessibleName(name);
    m_layout->setContentsMargins(0, 0, 0, 0);
    m_layout->setSpacing(2);
    m_buttons->setExclusive(true);
    connect(m_buttons, &QButtonGroup::idClicked, this, &NavBar::chosen);
}

void NavBar::add(const QString& word, const QString& tip) {
    auto* button = new NavButton(word);
    button->setToolTip(safeTip(tip));
    button->setAccessibleName(word);
    button->setAccessibleDescription(tip);
    m_buttons->addButton(button, count());
    m_layout->addWidget(button);
}

void NavBar::setCurrent(int index) {
    m_buttons->setExclusive(false);
    for (QAbstractButton* button : m_buttons->buttons())
        button->setChecked(m_buttons->id(button) == index);
    m_buttons->setExclusive(true);
}

int NavBar::current() const {
    return m_buttons->checkedId();
}

int NavBar::count() const {
    return static_cast<int>(m_buttons->buttons().size());
}

void NavBar::setShown(int index, bool shown) {
    m_buttons->button(index)->setVisible(shown);
}

void NavBar::setWord(int index, const QString& word) {
    m_buttons->button(index)->setText(menuText(word));
    m_buttons->button(index)->setAccessibleName(word);
    m_buttons->button(index)->updateGeometry();
}

} // namespace miterbook
