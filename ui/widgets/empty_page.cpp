// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/empty_page.h"

#include "widgets/plain_text.h"

#include <QAction>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace miterbook {

EmptyPage::EmptyPage(const QString& head, const QString& hint, QAction* action, QWidget* parent)
    : QWidget(parent) {
    QLabel* words = hintLabel(hint);
    QLabel* title = headLabel(head);
    title->setAlignment(Qt::AlignHCenter);
    words->setAlignment(Qt::AlignHCenter);
    words->setFixedWidth(fontMetrics().averageCharWidth() * 64);
    words->setMinimumHeight(words->heightForWidth(words->width()));

    auto* layout = new QVBoxLayout(this);
    layout->addStretch(1);
    layout->addWidget(title);
    layout->addWidget(words, 0, Qt::AlignHCenter);
    if (action) {
        auto* button = new QPushButton(action->text());
        connect(button, &QPushButton::clicked, action, &QAction::trigger);
        layout->addWidget(button, 0, Qt::AlignHCenter);
    }
    layout->addStretch(2);
}

} // namespace miterbook
