// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/safety_words.h"
#include "store/safety/snapshot.h"

namespace miterbook {

namespace {

void declareOut(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
    parser.addPositionalArgument(QStringLiteral("FILE"), QStringLiteral("the snapshot to write"));
}

void declareIn(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
    parser.addPositionalArgument(
        QStringLiteral("FILE"), QStringLiteral("a snapshot that was worked on elsewhere"));
}

struct TwoFiles {
    std::string book;
    std::string file;
};

Result<TwoFiles> twoFiles(const QCommandLineParser& parser) {
    const auto book = positional(parser, 0, "which book");
    if (!book)
        return book.error();
    const auto file = positional(parser, 1, "which snapshot");
    if (!file)
        return file.error();
    if (const auto fewEnough = noMoreThan(parser, 2); !fewEnough)
        return fewEnough.error();
    return TwoFiles{*book, *file};
}

Result<void> runOut(const QCommandLineParser& parser, Console& console) {
    const auto files = twoFiles(parser);
    if (!files)
        return files.error();
    if (const auto written = writeSnapshot(files->book, files->file); !written)
        return written;
    const auto holds = readSummary(files->file);
    if (!holds)
        return holds.error();
    console.out << files->file << ": " << summaryWords(*holds) << '\n';
    return {};
}

Result<void> runIn(const QCommandLineParser& parser, Console& console) {
    const auto files = twoFiles(parser);
    if (!files)
        return files.error();
    const auto taken = takeInSnapshot(files->book, files->file, SystemClock());
    if (!taken)
        return taken.error();
    const std::int64_t count = taken->lineage.theirs;
    console.out << files->book << ": " << count << (count == 1 ? " change" : " changes")
                << " taken in.\n";
    if (taken->replaced.former)
        console.out << "What it was before is kept as " << taken->replaced.former->path << ".\n";
    return {};
}

} // namespace

const Command snapshotCommand{
    "snapshot", "write the book as it is to a file, to carry elsewhere", declareOut, runOut};
const Command takeInCommand{
    "take-in", "put a snapshot back that was worked on elsewhere", declareIn, runIn};

} // namespace miterbook
