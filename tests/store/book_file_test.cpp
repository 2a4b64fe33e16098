// SPDX-License-Identifier: GPL-3.0-or-later
// Making, opening and backing up books.
#include "job/workbook.h"
#include "support/book_files.h"

#include <filesystem>

namespace miterbook {
namespace {

class BookFile : public testing::Test {
protected:
    std::unique_ptr<BookKeeper> create(const Book& book = smallBook()) {
        auto made = createBook(m_folder.book(), book, {&m_clock, {}});
        EXPECT_TRUE(made.ok()) << (made ? "" : made.error().sentence);
        return made ? std::move(made).value() : nullptr;
    }
    BookFolder m_folder;
    FixedClock m_clock{Date(std::chrono::year(2026) / 11 / 25)};
};

TEST_F(BookFile, IsThereAfterCreationAndAlone) {
    auto keeper = create();
    ASSERT_TRUE(keeper);
    keeper.reset();
    std::vector<std::string> names;
    for (const auto& entry : std::filesystem::directory_iterator(m_folder.path()))
        names.push_back(entry.path().filename().string());
    EXPECT_EQ(names, std::vector<std::string>{"shop.miterbook"}); // no lock, journal or part left
}

TEST_F(BookFile, ComesBackAsItWas) {
    create();
    auto keeper = openBook(m_folder.book(), OpenMode::write);
    ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
    EXPECT_FALSE((*keeper)->readOnly());
    const auto book = loadWhole(**keeper);
    ASSERT_TRUE(book.ok()) << book.error().sentence;
    EXPECT_EQ(*book, smallBook());
}

TEST_F(BookFile, KnowsTheHighestIdAndItsFirstEntry) {
    auto keeper = create();
    EXPECT_EQ(*keeper->lastId(), 45);
    const auto journal = keeper->journal();
    ASSERT_TRUE(journal.ok());
    ASSERT_EQ(journal->size(), 1U);
    EXPECT_EQ(journal->front().at, "2026-11-25T12:00:00Z");
    EXPECT_EQ(journal->front().edit.sentence, "Begin the book");
    EXPECT_TRUE(keeper->journal(1)->empty());
}

TEST_F(BookFile, PlansAreReadOnlyWhenOpened) {
    create();
    auto keeper = openBook(m_folder.book(), OpenMode::write);
    auto workbook = Workbook::open(**keeper);
    ASSERT_TRUE(workbook.ok()) << workbook.error().sentence;
    EXPECT_FALSE(workbook->book().isOpen(Id<Plan>(31)));
    ASSERT_TRUE(workbook->openPlan(Id<Plan>(31)).ok());
    EXPECT_EQ(workbook->book().sheet(Id<Plan>(31)).of<Opening>().size(), 3U);
}

TEST_F(BookFile, IsNotMadeOverAnother) {
    create();
    const std::string before = bytesOf(m_folder.book());
    const auto again = createBook(m_folder.book(), smallBook());
    ASSERT_FALSE(again.ok());
    EXPECT_EQ(again.error().sentence, "There is a file \"shop.miterbook\" already.");
    EXPECT_EQ(bytesOf(m_folder.book()), before);
}

TEST_F(BookFile, IsNotMadeInAFolderThatIsNotThere) {
    const auto made = createBook(m_folder.file("none/shop.miterbook"), smallBook());
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.error().fault, Fault::notFound);
}

TEST_F(BookFile, ARestOfAStoppedCreationIsNoHindrance) {
    writeBytes(m_folder.book() + ".part", "half a book");
    EXPECT_TRUE(create());
}

TEST_F(BookFile, MissingBookIsSaid) {
    const auto opened = openBook(m_folder.book(), OpenMode::write);
    ASSERT_FALSE(opened.ok());
    EXPECT_EQ(opened.error().fault, Fault::notFound);
    EXPECT_FALSE(std::filesystem::exists(m_folder.book()));
}

TEST_F(BookFile, BackUpIsAWholeBook) {
    auto keeper = create();
    const std::string copy = m_folder.file("copy.miterbook");
    ASSERT_TRUE(keeper->backUp(copy).ok());
    auto opened = openBook(copy, OpenMode::write);
    ASSERT_TRUE(opened.ok()) << opened.error().sentence;
    EXPECT_EQ(*loadWhole(**opened), smallBook());
    EXPECT_TRUE((*opened)->verify().ok());
    EXPECT_EQ((*opened)->journal()->size(), 1U);
    EXPECT_FALSE(keeper->backUp(copy).ok()); // never over another file
}

TEST_F(BookFile, OpenedForLookingItRefusesToWrite) {
    create();
    auto keeper = openBook(m_folder.book(), OpenMode::look);
    ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
    EXPECT_TRUE((*keeper)->readOnly());
    auto workbook = Workbook::open(**keeper);
    Builder builder;
    builder.id = Id<Builder>(50);
    builder.name = "Marlow";
    const auto done = workbook->perform(putEdit(workbook->book(), "Add builder Marlow", builder));
    ASSERT_FALSE(done.ok());
    EXPECT_EQ(done.error().sentence,
        "\"shop.miterbook\" was opened for looking only. Nothing was changed.");
    EXPECT_EQ(workbook->book().prices.of<Builder>().size(), 1U);
}

} // namespace
} // namespace miterbook
