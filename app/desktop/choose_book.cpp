// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/choose_book.h"

#include <QDir>
#include <QFileDialog>
#include <QMessageBox>
#include <QPushButton>
#include <QStandardPaths>

namespace miterbook {

namespace {

const QString filter = QStringLiteral("Miterbook (*.miterbook)");

QString folder() {
    return QStandardPaths::writableLocation(QStandardPaths::DocumentsLocation);
}

std::optional<BookChoice> askForNew() {
    QString path = QFileDialog::getSaveFileName(nullptr, QObject::tr("Begin a book"),
        QDir(folder()).filePath(QStringLiteral("shop.miterbook")), filter);
    if (path.isEmpty())
        return std::nullopt;
    if (!path.endsWith(QStringLiteral(".miterbook")))
        path += QStringLiteral(".miterbook");
    return BookChoice{path, true};
}

std::optional<BookChoice> askForOld() {
    const QString path = QFileDialog::getOpenFileName(
        nullptr, QObject::tr("Open a book"), folder(), filter);
    return path.isEmpty() ? std::nullopt : std::optional(BookChoice{path, false});
}

} // namespace

std::optional<BookChoice> chooseBook() {
    QMessageBox box;
    box.setTextFormat(Qt::PlainText);
    box.setText(QObject::tr("The shop's work is kept in one file, its book."));
    box.setInformativeText(
        QObject::tr("A new book begins with starter rates and prices for you to check."));
    const QPushButton* begin = box.addButton(
        QObject::tr("Begin a new book…"), QMessageBox::AcceptRole);
    const QPushButton* open = box.addButton(QObject::tr("Open a book…"), QMessageBox::ActionRole);
    box.addButton(QMessageBox::Close);
    box.exec();
    if (box.clickedButton() == begin)
        return askForNew();
    if (box.clickedButton() == open)
        return askForOld();
    return std::nullopt;
}

} // namespace miterbook
