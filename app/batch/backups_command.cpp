// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/safety_words.h"
#include "store/safety/backups.h"

#include <QFileInfo>

namespace miterbook {

namespace {

void declareBackups(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
    addSwitch(parser, "make", "make one now if the book has changed since the latest");
}

std::string fileNameOf(const std::string& path) {
    return QFileInfo(QString::fromStdString(path)).fileName().toStdString();
}

void printBackup(const Backup& backup, std::ostream& out) {
    const auto holds = readSummary(backup.path);
    out << fileNameOf(backup.path) << "\n    " << reasonWords(backup.reason) << ", "
        << sizeWords(backup.bytes) << "\n    "
        << (holds ? summaryWords(*holds) : holds.error().sentence) << '\n';
}

Result<void> makeOne(const std::string& book, Console& console) {
    const auto made = backUpIfDue(book, BackupReason::opened, SystemClock());
    if (!made)
        return made.error();
    if (!*made)
        console.out << "Nothing has changed since the latest backup.\n";
    return {};
}

Result<void> runBackups(const QCommandLineParser& parser, Console& console) {
    const auto book = positional(parser, 0, "of which book");
    if (!book)
        return book.error();
    if (const auto fewEnough = noMoreThan(parser, 1); !fewEnough)
        return fewEnough;
    if (isSet(parser, "make")) {
        if (const auto made = makeOne(*book, console); !made)
            return made;
    }
    const auto backups = backupsOf(*book);
    for (const Backup& backup : backups)
        printBackup(backup, console.out);
    if (backups.empty())
        console.out << "There are no backups in " << backupFolder(*book) << ".\n";
    return {};
}

} // namespace

const Command backupsCommand{"backups", "the backups of a book and what each holds, latest first",
    declareBackups, runBackups};

} // namespace miterbook
