// SPDX-License-Identifier: GPL-3.0-or-later
// A book file says what memory says, after every kind of Edit.
#include "job/workbook.h"
#include "support/book_files.h"
#include "support/every_edit.h"

namespace miterbook {
namespace {

class StoreLaws : public testing::TestWithParam<std::uint32_t> {
protected:
    BookFolder m_folder;
};

/// What the file holds, read by a second connection.
Book held(const std::string& path) {
    auto keeper = openBook(path, OpenMode::look);
    EXPECT_TRUE(keeper.ok()) << (keeper ? "" : keeper.error().sentence);
    if (!keeper)
        return {};
    auto book = loadWhole(**keeper);
    EXPECT_TRUE(book.ok()) << (book ? "" : book.error().sentence);
    return book ? *book : Book();
}

TEST_P(StoreLaws, ANewBookHoldsWhatItBeganWith) {
    const Book book = randomBook(GetParam(), 4);
    auto keeper = createBook(m_folder.book(), book);
    ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
    EXPECT_EQ(held(m_folder.book()), book);
    EXPECT_TRUE((*keeper)->verify().ok());
}

TEST_P(StoreLaws, EveryEditThatIsDoneIsInTheFileAndUndoneIsOut) {
    Book book = randomBook(GetParam(), 3);
    const Book before = book;
    auto keeper = createBook(m_folder.book(), book);
    ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
    for (const Edit& edit : everyEdit(book, GetParam())) {
        const auto written = (*keeper)->write(edit);
        if (!written) { // a removal of what is still used
            ASSERT_EQ(written.error().fault, Fault::conflict) << written.error().sentence;
            EXPECT_NE(written.error().sentence.find("still used"), std::string::npos)
                << edit.sentence << ": " << written.error().sentence;
            continue;
        }
        apply(book, edit);
        const auto loaded = loadWhole(**keeper);
        ASSERT_TRUE(loaded.ok()) << loaded.error().sentence;
        ASSERT_EQ(*loaded, book) << edit.sentence;
        ASSERT_TRUE((*keeper)->write(inverse(edit)).ok()) << edit.sentence;
        apply(book, inverse(edit));
    }
    EXPECT_EQ(held(m_folder.book()), before);
}

TEST_P(StoreLaws, TheJournalTellsTheWholeStory) {
    const Book start = randomBook(GetParam(), 2);
    auto keeper = createBook(m_folder.book(), start);
    ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
    std::vector<Edit> done;
    for (const Edit& edit : everyEdit(start, GetParam())) {
        if ((*keeper)->write(edit)) {
            ASSERT_TRUE((*keeper)->write(inverse(edit)).ok());
            done.push_back(edit);
        }
    }
    const auto journal = (*keeper)->journal();
    ASSERT_TRUE(journal.ok()) << journal.error().sentence;
    ASSERT_EQ(journal->size(), 1 + 2 * done.size());
    Book told;
    for (const JournalEntry& entry : *journal) {
        ASSERT_TRUE(check(told, entry.edit).ok()) << entry.edit.sentence;
        apply(told, entry.edit);
    }
    EXPECT_EQ(told, start);
    EXPECT_EQ(journal->at(1).edit, done.front());
}

TEST_P(StoreLaws, IdsOfUndoneEditsAreNotGivenAgain) {
    const Book book = randomBook(GetParam(), 1);
    auto keeper = createBook(m_folder.book(), book);
    ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
    Builder builder;
    builder.id = Id<Builder>(5000);
    const Edit add = putEdit(book, "Add a builder", builder);
    ASSERT_TRUE((*keeper)->write(add).ok());
    ASSERT_TRUE((*keeper)->write(inverse(add)).ok());
    keeper->reset();
    keeper = openBook(m_folder.book(), OpenMode::write);
    ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
    auto workbook = Workbook::open(**keeper);
    ASSERT_TRUE(workbook.ok()) << workbook.error().sentence;
    EXPECT_EQ(workbook->ids().next<Builder>().value(), 5001);
}

INSTANTIATE_TEST_SUITE_P(Seeds, StoreLaws, testing::Values(11, 12));

} // namespace
} // namespace miterbook
