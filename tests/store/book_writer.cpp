// SPDX-License-Identifier: GPL-3.0-or-later
// Writes edits into a book until it is killed: `book_writer BOOK`. Edit n sets the note of builder
// 10 and adds an opening; its number goes to standard output after it has been written.
// `book_writer BOOK COUNT` opens the book anew for each of so many edits, waiting while another
// program holds it, and says at the end how often it was told who does.
#include "job/workbook.h"
#include "store/book_file.h"

#include <QCoreApplication>

#include <chrono>
#include <cstdio>
#include <cstdlib>
#include <thread>

namespace miterbook {
namespace {

/// The number of the last edit that the book holds.
int lastWritten(const Book& book) {
    const Builder* builder = book.prices.of<Builder>().find(Id<Builder>(10));
    return builder->note.empty() ? 0 : std::atoi(builder->note.c_str());
}

Edit numbered(Workbook& workbook, int n) {
    const Book& book = workbook.book();
    Builder builder = *book.prices.of<Builder>().find(Id<Builder>(10));
    builder.note = std::to_string(n);
    Opening opening;
    opening.id = workbook.ids().next<Opening>();
    opening.plan = Id<Plan>(31);
    opening.mark = "K" + std::to_string(n);
    return EditBuilder(book, "Edit " + std::to_string(n)).put(builder).put(opening).take();
}

int writeUntilKilled(const char* path) {
    const auto keeper = openBook(path, OpenMode::write);
    if (!keeper) {
        std::fprintf(stderr, "%s\n", keeper.error().sentence.c_str());
        return 1;
    }
    auto workbook = Workbook::open(**keeper);
    if (!workbook || !workbook->openPlan(Id<Plan>(31)))
        return 1;
    for (int n = lastWritten(workbook->book()) + 1;; ++n) {
        if (const auto done = workbook->perform(numbered(*workbook, n)); !done) {
            std::fprintf(stderr, "%s\n", done.error().sentence.c_str());
            return 1;
        }
        std::printf("%d\n", n);
        std::fflush(stdout);
    }
}

Result<void> writeNext(BookKeeper& keeper) {
    auto workbook = Workbook::open(keeper);
    if (!workbook)
        return workbook.error();
    if (auto opened = workbook->openPlan(Id<Plan>(31)); !opened)
        return opened;
    return workbook->perform(numbered(*workbook, lastWritten(workbook->book()) + 1));
}

int writeInTurns(const char* path, int count) {
    int told = 0;
    while (count > 0) {
        const auto keeper = openBook(path, OpenMode::write);
        if (!keeper && keeper.error().fault == Fault::conflict) {
            told += keeper.error().sentence.find("book_writer") != std::string::npos ? 1 : 0;
            std::this_thread::sleep_for(std::chrono::microseconds(500));
            continue;
        }
        const auto done = keeper ? writeNext(**keeper) : Result<void>(keeper.error());
        if (!done) {
            std::fprintf(stderr, "%s\n", done.error().sentence.c_str());
            return 1;
        }
        --count;
    }
    std::printf("told %d", told);
    return 0;
}

} // namespace
} // namespace miterbook

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    if (argc == 3)
        return miterbook::writeInTurns(argv[1], std::atoi(argv[2]));
    return argc == 2 ? miterbook::writeUntilKilled(argv[1]) : 2;
}
