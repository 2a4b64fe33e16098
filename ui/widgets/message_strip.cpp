// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/message_strip.h"

#include "widgets/plain_text.h"

#include <QAccessible>
#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

namespace miterbook {

MessageStrip::MessageStrip(QWidget* parent)
    : QFrame(parent)
    , m_label(plainLabel({})) {
    setFrameShape(QFrame::StyledPanel);
    setAutoFillBackground(true);
    setBackgroundRole(QPalette::ToolTipBase);
    setAccessibleName(tr("Message"));
    m_label->setForegroundRole(QPalette::ToolTipText);
    auto* close = new QPushButton(tr("Dismiss"));
    close->setFocusPolicy(Qt::TabFocus);
    close->setAccessibleName(tr("Dismiss the message"));
    connect(close, &QPushButton::clicked, this, &MessageStrip::dismiss);

    auto* layout = new QHBoxLayout(this);
    layout->addWidget(m_label, 1);
    layout->addWidget(close, 0, Qt::AlignTop);
    hide();
}

QString MessageStrip::sentence() const {
    return m_label->text();
}

void MessageStrip::say(const QString& sentence) {
    m_label->setText(sentence);
    m_label->setAccessibleName(sentence);
    setVisible(!sentence.isEmpty());
    if (sentence.isEmpty())
        return;
    QAccessibleEvent alert(this, QAccessible::Alert);
    QAccessible::updateAccessibility(&alert);
}

void MessageStrip::dismiss() {
    say({});
}

} // namespace miterbook
