// SPDX-License-Identifier: GPL-3.0-or-later
// Writes edits into a book until it is killed: `book_writer BOOK`. Edit n sets the note of builder
// 10 and adds an opening; its number goes to standard output after it has been written.
#include "job/workbook.h"
#include "store/book_file.h"

#include <QCoreApplication>

#include <cstdio>

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

} // namespace
} // namespace miterbook

int main(int argc, char** argv) {
    const QCoreApplication application(argc, argv);
    return argc == 2 ? miterbook::writeUntilKilled(argv[1]) : 2;
}
