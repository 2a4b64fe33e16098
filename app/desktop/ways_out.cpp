// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/ways_out.h"

#include "desk/text.h"
#include "desktop/safety_desk.h"
#include "store/safety/restore.h"
#include "store/safety/salvage.h"
#include "windows/backups_dialog.h"

#include <QApplication>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMessageBox>
#include <QPushButton>

namespace miterbook {

namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("WaysOut", words);
}

void inform(QWidget* parent, const QString& sentence, const QString& details = {}) {
    QMessageBox box(parent);
    box.setTextFormat(Qt::PlainText);
    box.setText(sentence);
    box.setDetailedText(details);
    box.exec();
}

bool restoreOne(QWidget* parent, const std::string& book, const Clock& clock) {
    BackupsDialog dialog(backupLines(book), parent);
    if (dialog.exec() != QDialog::Accepted || dialog.chosen().isEmpty())
        return false;
    const auto done = replaceBook(book, utf8(dialog.chosen()), clock);
    if (!done)
        inform(parent, text(done.error().sentence));
    return done.ok();
}

QString salvageSentence(const SalvageReport& report) {
    if (report.complete())
        return tr("Everything was saved; nothing is known to be lost.");
    return tr("What could be read is in the new book. %1 things want looking over.")
        .arg(report.lost.size());
}

QString salvagedBook(QWidget* parent, const QString& book, const Clock& clock) {
    const QFileInfo info(book);
    const QString proposal = info.dir().filePath(
        info.completeBaseName() + QStringLiteral(" salvaged.miterbook"));
    const QString path = QFileDialog::getSaveFileName(parent, tr("Salvage into a new book"),
        proposal, QStringLiteral("Miterbook (*.miterbook)"), nullptr,
        QFileDialog::DontConfirmOverwrite);
    if (path.isEmpty())
        return {};
    QApplication::setOverrideCursor(Qt::WaitCursor);
    const auto report = salvageBook(utf8(book), utf8(path), clock);
    QApplication::restoreOverrideCursor();
    if (!report) {
        inform(parent, text(report.error().sentence));
        return {};
    }
    QStringList lost;
    for (const std::string& sentence : report->lost)
        lost << text(sentence);
    inform(parent, salvageSentence(*report), lost.join(QLatin1Char('\n')));
    return path;
}

} // namespace

WayTaken offerWaysOut(
    QWidget* parent, const QString& book, const Error& error, const Clock& clock) {
    QMessageBox box(QMessageBox::Warning, QStringLiteral("Miterbook"), text(error.sentence),
        QMessageBox::NoButton, parent);
    box.setTextFormat(Qt::PlainText);
    const bool there = QFileInfo::exists(book);
    const bool held = error.fault == Fault::conflict;
    const bool damaged = error.fault == Fault::storage || error.fault == Fault::notOurs;
    QPushButton* look = nullptr;
    QPushButton* backup = nullptr;
    QPushButton* salvage = nullptr;
    if (there && (held || error.fault == Fault::storage))
        look = box.addButton(tr("&Look only"), QMessageBox::ActionRole);
    if ((damaged || !there) && !backupLines(utf8(book)).empty())
        backup = box.addButton(tr("Go back to a &backup…"), QMessageBox::ActionRole);
    if (there && error.fault == Fault::storage)
        salvage = box.addButton(tr("&Salvage into a new book…"), QMessageBox::ActionRole);
    box.addButton(QMessageBox::Close);
    box.exec();
    const auto* clicked = box.clickedButton();
    if (look && clicked == look)
        return {WayOut::look, book};
    if (backup && clicked == backup && restoreOne(parent, utf8(book), clock))
        return {WayOut::again, book};
    if (salvage && clicked == salvage) {
        const QString path = salvagedBook(parent, book, clock);
        return path.isEmpty() ? WayTaken() : WayTaken{WayOut::salvaged, path};
    }
    return {};
}

} // namespace miterbook
