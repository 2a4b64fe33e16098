// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/question.h"

#include <QAbstractButton>
#include <QMessageBox>
#include <QPushButton>

namespace miterbook {

namespace {

void fill(QMessageBox& box, const Notice& notice) {
    box.setTextFormat(Qt::PlainText);
    box.setWindowTitle(notice.title);
    box.setText(notice.sentence);
    box.setInformativeText(notice.more);
    box.setDetailedText(notice.details);
}

} // namespace

void tell(QWidget* parent, const Notice& notice) {
    QMessageBox box(parent);
    fill(box, notice);
    box.exec();
}

std::optional<qsizetype> askWay(QWidget* parent, const Notice& notice, const QStringList& ways) {
    QMessageBox box(parent);
    fill(box, notice);
    QList<const QAbstractButton*> buttons;
    for (const QString& way : ways)
        buttons << box.addButton(way, QMessageBox::ActionRole);
    box.addButton(QMessageBox::Close);
    box.exec();
    const qsizetype place = buttons.indexOf(box.clickedButton());
    return place < 0 ? std::nullopt : std::optional(place);
}

} // namespace miterbook
