// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/safety_words.h"
#include "store/safety/restore.h"

#include <QFile>

namespace miterbook {

namespace {

void declareRestore(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
    parser.addPositionalArgument(QStringLiteral("BACKUP"),
        QStringLiteral("a file that `backups` names, or any other book to put in its place"));
}

/// A name of the list, or a path.
std::string backupPath(const std::string& book, const std::string& said) {
    const std::string listed = backupFolder(book) + "/" + said;
    return QFile::exists(QString::fromStdString(listed)) ? listed : said;
}

Result<void> runRestore(const QCommandLineParser& parser, Console& console) {
    const auto book = positional(parser, 0, "which book");
    if (!book)
        return book.error();
    const auto said = positional(parser, 1, "which backup; `miterbook backups BOOK` lists them");
    if (!said)
        return said.error();
    if (const auto fewEnough = noMoreThan(parser, 2); !fewEnough)
        return fewEnough;
    const auto done = replaceBook(*book, backupPath(*book, *said), SystemClock());
    if (!done)
        return done.error();
    const auto holds = readSummary(*book);
    console.out << *book << " now holds " << (holds ? summaryWords(*holds) : *said) << ".\n";
    if (done->former)
        console.out << "What it was before is kept as " << done->former->path << ".\n";
    return {};
}

} // namespace

const Command restoreCommand{"restore",
    "put a backup in the place of a book, which is kept beside it", declareRestore, runRestore};

} // namespace miterbook
