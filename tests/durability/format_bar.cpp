// SPDX-License-Identifier: GPL-3.0-or-later
// Books of every format there has been, and one that is not there yet.
#include "durability/bar.h"
#include "store/safety/backups.h"
#include "store/safety/old_book.h"
#include "support/book_files.h"

namespace miterbook {

namespace {

void bringUpFrom(int format, Bar& bar) {
    BookFolder folder;
    writeOldBook(folder.book(), format);
    const std::string name = "format " + std::to_string(format);
    auto keeper = openBook(folder.book(), OpenMode::write);
    if (!keeper)
        return bar.lose(name + ": " + keeper.error().sentence);
    const auto book = loadWhole(**keeper);
    if (!book || *book != smallBook())
        bar.lose(name + ": not what it was");
    if (format < formatOf(schemaSteps()) && backupsOf(folder.book()).size() != 1)
        bar.lose(name + ": no copy was made before");
}

void refuseNewer(Bar& bar) {
    BookFolder folder;
    (void)createBook(folder.book(), smallBook());
    std::vector<SchemaStep> steps = schemaSteps();
    steps.push_back({formatOf(steps) + 1, "CREATE TABLE later (id INTEGER PRIMARY KEY) STRICT;\n"});
    (void)openBookWith(steps, folder.book(), OpenMode::write);
    const std::string before = bytesOf(folder.book());
    const auto opened = openBook(folder.book(), OpenMode::write);
    if (opened || opened.error().fault != Fault::notOurs)
        bar.lose("a newer format is not refused");
    if (bytesOf(folder.book()) != before)
        bar.lose("a newer book was changed");
}

} // namespace

Bar formatsBar() {
    Bar bar{"old formats are brought up on a copy, a newer one is refused",
        formatOf(schemaSteps()) + 1, 0, {}, {}};
    for (int format = 1; format <= formatOf(schemaSteps()); ++format, ++bar.tried)
        bringUpFrom(format, bar);
    refuseNewer(bar);
    ++bar.tried;
    return bar;
}

} // namespace miterbook
