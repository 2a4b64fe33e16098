// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/empty_page.h"

#include "widgets/plain_text.h"

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace miterbook {

EmptyPage::EmptyPage(const QString& head, const QString& hint, QAction* action, QWidget* parent)
    : QWidget(parent)
    , m_hint(hintLabel(hint)) {
    const int width = fontMetrics().averageCharWidth() * 64;
    QLabel* title = headLabel(head);
    title->setAlignment(Qt::AlignHCenter);
    m_hint->setAlignment(Qt::AlignHCenter);
    m_hint->setMinimumWidth(width / 2);
    m_hint->setMaximumWidth(width);

    auto* layout = new QVBoxLayout(this);
    layout->addStretch(1);
    layout->addWidget(title);
    layout->addWidget(m_hint, 0, Qt::AlignHCenter);
    if (action) {
        auto* button = new QPushButton(action->text());
        connect(button, &QPushButton::clicked, action, &QAction::trigger);
        layout->addWidget(button, 0, Qt::AlignHCenter);
    }
    layout->addStretch(2);
}

void EmptyPage::setHint(const QString& hint) {
    m_hint->setText(hint);
}

} // namespace miterbook
