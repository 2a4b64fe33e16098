// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/help.h"

#include "windows/help_text.h"

#include <QAction>
#include <QApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QMenu>
#include <QPlainTextEdit>
#include <QVBoxLayout>

namespace miterbook {

namespace {

void showPage(const QString& title, const QString& words, QWidget& window) {
    auto* dialog = new QDialog(&window);
    dialog->setAttribute(Qt::WA_DeleteOnClose);
    dialog->setWindowTitle(title);
    auto* page = new QPlainTextEdit(words);
    page->setReadOnly(true);
    page->setAccessibleName(title);
    page->setTextInteractionFlags(Qt::TextSelectableByKeyboard | Qt::TextSelectableByMouse);
    page->setMinimumSize(
        page->fontMetrics().averageCharWidth() * 78, page->fontMetrics().height() * 26);
    auto* buttons = new QDialogButtonBox(QDialogButtonBox::Close);
    QObject::connect(buttons, &QDialogButtonBox::rejected, dialog, &QDialog::close);
    auto* layout = new QVBoxLayout(dialog);
    layout->addWidget(page);
    layout->addWidget(buttons);
    dialog->show();
}

} // namespace

void fillHelpMenu(QMenu& menu, QWidget& window) {
    const auto add = [&](const QString& title, const QKeySequence& keys, QString (*words)()) {
        QObject::connect(menu.addAction(title, keys), &QAction::triggered, &window,
            [title, words, &window] { showPage(QString(title).remove(u'&'), words(), window); });
    };
    add(QObject::tr("&How a job walks through the book"), QKeySequence::HelpContents, walkText);
    add(QObject::tr("&Keys"), QKeySequence(Qt::CTRL | Qt::Key_Slash), keysText);
    add(QObject::tr("&About Miterbook"), {}, aboutText);
}

} // namespace miterbook
