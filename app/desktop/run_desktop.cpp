// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/desktop.h"
#include "desktop/recent_books.h"
#include "widgets/question.h"
#include "widgets/table_style.h"
#include "windows/choose_book.h"

#include <QApplication>

namespace miterbook {

namespace {

/// The book to begin with: the argument, else the one used last; empty when there is neither.
QString firstBook() {
    const QStringList arguments = QCoreApplication::arguments();
    if (arguments.size() > 1)
        return arguments.at(1);
    const QStringList recent = recentBooks();
    return recent.isEmpty() ? QString() : recent.first();
}

/// Tries the book, and others the user chooses, until one is open or the user gives up.
bool openSome(Desktop& desktop, const QString& first) {
    if (!first.isEmpty()) {
        if (desktop.openBook(first)) // says itself what is wrong
            return true;
    }
    while (const auto choice = chooseBook()) {
        const auto opened = choice->isNew ? desktop.newBook(choice->path)
                                          : desktop.openBook(choice->path);
        if (opened)
            return true;
        if (choice->isNew)
            tell(nullptr, {QString::fromStdString(opened.error().sentence)});
    }
    return false;
}

} // namespace

int runDesktop(QApplication& application) {
    QApplication::setStyle(new TableStyle);
    Desktop desktop;
    if (!openSome(desktop, firstBook()))
        return 1;
    return application.exec();
}

} // namespace miterbook
