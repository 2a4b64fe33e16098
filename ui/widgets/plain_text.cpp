// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/plain_text.h"

#include <QLabel>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

QString safeTip(const QString& plain) {
    if (plain.isEmpty())
        return {};
    return u"<p style='white-space:pre-wrap'>"_s + plain.toHtmlEscaped() + u"</p>"_s;
}

QLabel* plainLabel(const QString& plain, QWidget* parent) {
    auto* label = new QLabel(parent);
    label->setTextFormat(Qt::PlainText);
    label->setText(plain);
    label->setWordWrap(true);
    label->setTextInteractionFlags(Qt::TextSelectableByMouse);
    return label;
}

QLabel* headLabel(const QString& plain, QWidget* parent) {
    QLabel* label = plainLabel(plain, parent);
    QFont font = label->font();
    font.setPointSizeF(font.pointSizeF() * 1.25);
    font.setWeight(QFont::DemiBold);
    label->setFont(font);
    return label;
}

QLabel* hintLabel(const QString& plain, QWidget* parent) {
    QLabel* label = plainLabel(plain, parent);
    label->setForegroundRole(QPalette::PlaceholderText);
    return label;
}

QString counted(qsizetype number, const QString& one, const QString& many) {
    return number == 1 ? one : many.arg(number);
}

QString spokenCell(const QString& title, const QString& cell, const QString& mark) {
    QString spoken = title + u": "_s + (cell.isEmpty() ? u"empty"_s : cell);
    return mark.isEmpty() ? spoken : spoken + u", "_s + mark;
}

} // namespace miterbook
