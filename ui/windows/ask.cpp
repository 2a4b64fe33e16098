// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/ask.h"

#include <QMessageBox>
#include <QPushButton>

namespace miterbook {

bool ask(QWidget* parent, const QString& question, const QString& comfort, const QString& yes) {
    QMessageBox box(parent);
    box.setTextFormat(Qt::PlainText);
    box.setIcon(QMessageBox::Question);
    box.setText(question);
    box.setInformativeText(comfort);
    const QPushButton* go = box.addButton(yes, QMessageBox::AcceptRole);
    QPushButton* keep = box.addButton(QObject::tr("Keep"), QMessageBox::RejectRole);
    box.setDefaultButton(keep);
    box.exec();
    return box.clickedButton() == go;
}

} // namespace miterbook
