// SPDX-License-Identifier: GPL-3.0-or-later
// Other programs: killed ones, and two at a time.
#include "durability/bar.h"
#include "job/workbook.h"
#include "support/book_files.h"
#include "support/random_values.h"
#include "support/writer_process.h"

#include <QProcess>

#include <cstdlib>
#include <thread>

namespace miterbook {

namespace {

constexpr int openingsBefore = 3; ///< in the small book

/// The number of the last edit, or -1 with a loss noted when the book is not whole.
int lastEdit(const std::string& path, Bar& bar) {
    auto keeper = openBook(path, OpenMode::write);
    if (!keeper) {
        bar.lose(keeper.error().sentence);
        return -1;
    }
    const auto book = loadWhole(**keeper);
    if (!book || !(*keeper)->verify()) {
        bar.lose("the book is damaged");
        return -1;
    }
    const int last = std::atoi(book->prices.of<Builder>().find(Id<Builder>(10))->note.c_str());
    const auto openings = std::ssize(book->sheet(Id<Plan>(31)).of<Opening>());
    const auto entries = (*keeper)->journal()->size();
    if (openings != last + openingsBefore || entries != static_cast<std::size_t>(last) + 1)
        bar.lose("edit " + std::to_string(last) + " is there in part");
    return last;
}

} // namespace

Bar killBar(const Extent& extent) {
    Bar bar{"kill -9 in the midst of edits", extent.kills, 0, {}, {}};
    BookFolder folder;
    (void)createBook(folder.book(), smallBook());
    RandomValues random(extent.seed);
    int last = 0;
    int acknowledged = 0;
    for (; bar.tried < extent.kills; ++bar.tried) {
        WriterProcess writer(folder.book());
        writer.readAcknowledged(last + 1 + static_cast<int>(random.below(4)));
        std::this_thread::sleep_for(std::chrono::microseconds(random.below(3000)));
        acknowledged = writer.kill();
        last = lastEdit(folder.book(), bar);
        if (last < acknowledged || last > acknowledged + 1) {
            bar.lose("kill " + std::to_string(bar.tried) + ": " + std::to_string(acknowledged)
                + " acknowledged, " + std::to_string(last) + " there");
            return bar;
        }
    }
    bar.note = std::to_string(acknowledged) + " edits acknowledged";
    return bar;
}

Bar twoProgramsBar(const Extent& extent) {
    Bar bar{"two programs write one book in turns, edits", 2L * extent.editsOfTwo, 0, {}, {}};
    BookFolder folder;
    (void)createBook(folder.book(), smallBook());
    const QStringList arguments{
        QString::fromStdString(folder.book()), QString::number(extent.editsOfTwo)};
    QProcess one;
    QProcess other;
    for (QProcess* program : {&one, &other})
        program->start(QStringLiteral(MITERBOOK_BOOK_WRITER), arguments);
    int told = 0;
    for (QProcess* program : {&one, &other}) {
        constexpr int patience = 600'000;
        if (!program->waitForFinished(patience) || program->exitCode() != 0)
            bar.lose("a writer failed: " + program->readAllStandardError().toStdString());
        told += program->readAllStandardOutput().split(' ').last().toInt();
    }
    bar.tried = lastEdit(folder.book(), bar);
    if (bar.tried != bar.wanted)
        bar.lose(std::to_string(bar.tried) + " edits are there");
    if (told == 0 && extent.editsOfTwo >= 100)
        bar.lose("neither was ever told who holds the book");
    bar.note = "told who holds it " + std::to_string(told) + " times";
    return bar;
}

} // namespace miterbook
