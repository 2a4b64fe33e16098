// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/safety_desk.h"

#include "batch/safety_words.h"
#include "desk/text.h"
#include "store/safety/book_check.h"
#include "store/safety/snapshot.h"

namespace miterbook {

std::vector<BackupLine> backupLines(const std::string& book) {
    std::vector<BackupLine> lines;
    for (const Backup& backup : backupsOf(book)) {
        const auto holds = readSummary(backup.path);
        lines.push_back(
            {text(backup.path), text(localTime(backup.at)), text(reasonWords(backup.reason)),
                text(holds ? summaryWords(*holds) : holds.error().sentence),
                text(sizeWords(backup.bytes)), holds.ok()});
    }
    return lines;
}

std::vector<BackupLine> SafetyDesk::backups() const {
    return backupLines(m_book());
}

void SafetyDesk::restoreBackup(const QString& path) {
    m_reopen([backup = utf8(path), this](const std::string& book) -> Result<void> {
        const auto replaced = replaceBook(book, backup, m_clock);
        return replaced ? Result<void>() : replaced.error();
    });
}

Result<void> SafetyDesk::writeSnapshot(const QString& path) {
    return miterbook::writeSnapshot(m_book(), utf8(path));
}

void SafetyDesk::takeInSnapshot(const QString& path) {
    m_reopen([snapshot = utf8(path), this](const std::string& book) -> Result<void> {
        const auto taken = miterbook::takeInSnapshot(book, snapshot, m_clock);
        return taken ? Result<void>() : taken.error();
    });
}

Result<QStringList> SafetyDesk::checkBook() {
    const auto report = miterbook::checkBook(m_book());
    if (!report)
        return report.error();
    QStringList findings;
    for (const std::string& finding : report->findings)
        findings << text(finding);
    return findings;
}

} // namespace miterbook
