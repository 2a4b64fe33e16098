// SPDX-License-Identifier: GPL-3.0-or-later
// A writer is killed in the middle of its work, again and again: no edit that it has acknowledged
// is lost and none is half there. MITERBOOK_KILLS says how often (default 30).
#include "support/book_files.h"
#include "support/random_values.h"
#include "support/writer_process.h"

#include <cstdlib>
#include <thread>

namespace miterbook {
namespace {

int wantedKills() {
    const char* text = std::getenv("MITERBOOK_KILLS");
    return text ? std::atoi(text) : 30;
}

/// The number of the last edit in the book; each must be there as a whole.
int checkedLast(const std::string& path) {
    auto keeper = openBook(path, OpenMode::write);
    EXPECT_TRUE(keeper.ok()) << (keeper ? "" : keeper.error().sentence);
    if (!keeper)
        return -1;
    const auto book = loadWhole(**keeper);
    EXPECT_TRUE(book.ok());
    EXPECT_TRUE((*keeper)->verify().ok());
    const Builder* builder = book->prices.of<Builder>().find(Id<Builder>(10));
    const int last = std::atoi(builder->note.c_str());
    const auto& openings = book->sheet(Id<Plan>(31)).of<Opening>();
    EXPECT_EQ(std::ssize(openings), last + 3); // three were there from the start
    EXPECT_EQ((*keeper)->journal()->size(), static_cast<std::size_t>(last) + 1);
    return last;
}

TEST(Kill, LosesNothingThatWasAcknowledged) {
    BookFolder folder;
    ASSERT_TRUE(createBook(folder.book(), smallBook()).ok());
    RandomValues random(9);
    int last = 0;
    for (int i = 0; i < wantedKills(); ++i) {
        WriterProcess writer(folder.book());
        const int wanted = last + 1 + static_cast<int>(random.below(4));
        ASSERT_GE(writer.readAcknowledged(wanted), wanted) << "the writer ended by itself";
        // Somewhere within the next edits; when, does not matter to what must hold.
        std::this_thread::sleep_for(std::chrono::microseconds(random.below(3000)));
        const int acknowledged = writer.kill();
        last = checkedLast(folder.book());
        ASSERT_GE(last, acknowledged) << "kill " << i;
        ASSERT_LE(last, acknowledged + 1) << "kill " << i;
    }
}

} // namespace
} // namespace miterbook
