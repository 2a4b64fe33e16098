// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/ways_out.h"

#include "desk/text.h"
#include "desktop/safety_desk.h"
#include "store/safety/restore.h"
#include "store/safety/salvage.h"
#include "widgets/question.h"
#include "windows/backups_dialog.h"
#include "windows/choose_book.h"

#include <QApplication>
#include <QFileInfo>

#include <vector>

namespace miterbook {

namespace {

QString tr(const char* words) {
    return QCoreApplication::translate("WaysOut", words);
}

bool restoreOne(QWidget* parent, const std::string& book, const Clock& clock) {
    BackupsDialog dialog(backupLines(book), parent);
    if (dialog.exec() != QDialog::Accepted || dialog.chosen().isEmpty())
        return false;
    const auto done = replaceBook(book, utf8(dialog.chosen()), clock);
    if (!done)
        tell(parent, {text(done.error().sentence)});
    return done.ok();
}

QString salvageSentence(const SalvageReport& report) {
    if (report.complete())
        return tr("Everything was saved; nothing is known to be lost.");
    return tr("What could be read is in the new book. %1 things want looking over.")
        .arg(report.lost.size());
}

QString salvagedBook(QWidget* parent, const QString& book, const Clock& clock) {
    const QString path = askForSalvaged(parent, book);
    if (path.isEmpty())
        return {};
    QApplication::setOverrideCursor(Qt::WaitCursor);
    const auto report = salvageBook(utf8(book), utf8(path), clock);
    QApplication::restoreOverrideCursor();
    if (!report) {
        tell(parent, {text(report.error().sentence)});
        return {};
    }
    QStringList lost;
    for (const std::string& sentence : report->lost)
        lost << text(sentence);
    tell(parent, {salvageSentence(*report), {}, lost.join(QLatin1Char('\n'))});
    return path;
}

/// Goes the way that was chosen, as far as it leads.
WayTaken take(QWidget* parent, const QString& book, WayOut way, const Clock& clock) {
    if (way == WayOut::again)
        return restoreOne(parent, utf8(book), clock) ? WayTaken{way, book} : WayTaken();
    if (way == WayOut::salvaged) {
        const QString path = salvagedBook(parent, book, clock);
        return path.isEmpty() ? WayTaken() : WayTaken{way, path};
    }
    return {way, book};
}

} // namespace

WayTaken offerWaysOut(
    QWidget* parent, const QString& book, const Error& error, const Clock& clock) {
    const bool there = QFileInfo::exists(book);
    const bool held = error.fault == Fault::conflict;
    const bool damaged = error.fault == Fault::storage || error.fault == Fault::notOurs;
    QStringList words;
    std::vector<WayOut> ways;
    const auto offer = [&](bool possible, const QString& word, WayOut way) {
        if (!possible)
            return;
        words << word;
        ways.push_back(way);
    };
    offer(there && (held || error.fault == Fault::storage), tr("&Look only"), WayOut::look);
    offer((damaged || !there) && !backupLines(utf8(book)).empty(), tr("Go back to a &backup\u2026"),
        WayOut::again);
    offer(there && error.fault == Fault::storage, tr("&Salvage into a new book\u2026"),
        WayOut::salvaged);
    const auto chosen = askWay(parent, {text(error.sentence)}, words);
    return chosen ? take(parent, book, ways[static_cast<std::size_t>(*chosen)], clock) : WayTaken();
}

} // namespace miterbook
