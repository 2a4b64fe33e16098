// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/safety_actions.h"

#include "widgets/question.h"
#include "windows/app_services.h"
#include "windows/ask.h"
#include "windows/backups_dialog.h"
#include "windows/main_window.h"

#include <QApplication>
#include <QDate>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

const QString filter = u"Miterbook (*.miterbook)"_s;

/// "shop 2026-11-26.miterbook" in the user's home folder.
QString snapshotName(const QString& book) {
    const QString name = QFileInfo(book).completeBaseName() + u' '
        + QDate::currentDate().toString(Qt::ISODate) + u".miterbook"_s;
    return QDir::home().filePath(name);
}

} // namespace

SafetyActions::SafetyActions(AppServices& services, MainWindow& window)
    : QObject(&window)
    , m_services(services)
    , m_window(window) {
}

void SafetyActions::fill(QMenu& menu) {
    const auto add = [&](const QString& words, auto slot) {
        connect(menu.addAction(words), &QAction::triggered, this, slot);
    };
    add(tr("Back&ups\u2026"), &SafetyActions::showBackups);
    add(tr("&Write a snapshot\u2026"), &SafetyActions::writeSnapshot);
    add(tr("&Take in a snapshot\u2026"), &SafetyActions::takeInSnapshot);
    add(tr("&Check the book"), &SafetyActions::checkBook);
}

void SafetyActions::showBackups() {
    BackupsDialog dialog(m_services.safety().backups(), &m_window);
    if (dialog.exec() != QDialog::Accepted || dialog.chosen().isEmpty())
        return;
    if (ask(&m_window, tr("Put this backup in the place of the book?"),
            tr("What was entered since then is kept as a backup of its own."), tr("Put it back")))
        m_services.safety().restoreBackup(dialog.chosen());
}

void SafetyActions::writeSnapshot() {
    QString path = QFileDialog::getSaveFileName(&m_window, tr("Write a snapshot"),
        snapshotName(m_services.bookPath()), filter, nullptr, QFileDialog::DontConfirmOverwrite);
    if (path.isEmpty())
        return;
    if (!path.endsWith(u".miterbook"_s, Qt::CaseInsensitive))
        path += u".miterbook"_s;
    m_window.sayResult(m_services.safety().writeSnapshot(path));
}

void SafetyActions::takeInSnapshot() {
    const QString path = QFileDialog::getOpenFileName(
        &m_window, tr("Take in a snapshot"), QDir::homePath(), filter);
    if (!path.isEmpty())
        m_services.safety().takeInSnapshot(path);
}

void SafetyActions::checkBook() {
    QApplication::setOverrideCursor(Qt::WaitCursor);
    const auto findings = m_services.safety().checkBook();
    QApplication::restoreOverrideCursor();
    if (!findings)
        m_window.sayResult(findings.error());
    else
        showFindings(*findings);
}

void SafetyActions::showFindings(const QStringList& findings) {
    if (findings.isEmpty()) {
        tell(&m_window,
            {tr("Nothing is wrong with the book."),
                tr("Every row is as its last change has left it, and every issued paper as it was "
                   "issued."),
                {}});
        return;
    }
    tell(&m_window,
        {tr("The book file is damaged."),
            tr("Go back to a backup, or close the book and have it salvaged into a new one. The "
               "first finding: %1")
                .arg(findings.first()),
            findings.join(u'\n')});
}

} // namespace miterbook
