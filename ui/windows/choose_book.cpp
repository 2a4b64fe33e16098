// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/choose_book.h"

#include "widgets/question.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
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
    const auto way = askWay(nullptr,
        {QObject::tr("The shop's work is kept in one file, its book."),
            QObject::tr("A new book begins with starter rates and prices for you to check."), {}},
        {QObject::tr("Begin a new book\u2026"), QObject::tr("Open a book\u2026")});
    if (!way)
        return std::nullopt;
    return *way == 0 ? askForNew() : askForOld();
}

QString askForSalvaged(QWidget* parent, const QString& damaged) {
    const QFileInfo info(damaged);
    const QString proposal = info.dir().filePath(
        info.completeBaseName() + QStringLiteral(" salvaged.miterbook"));
    return QFileDialog::getSaveFileName(parent, QObject::tr("Salvage into a new book"), proposal,
        filter, nullptr, QFileDialog::DontConfirmOverwrite);
}

} // namespace miterbook
