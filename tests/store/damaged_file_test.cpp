// SPDX-License-Identifier: GPL-3.0-or-later
// A damaged book says so; it never crashes and never passes for a whole one in silence.
#include "support/book_files.h"
#include "support/random_values.h"
#include "support/raw_sql.h"

namespace miterbook {
namespace {

class DamagedFile : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(createBook(m_folder.book(), smallBook()).ok());
        m_bytes = bytesOf(m_folder.book());
    }
    /// Opens and reads all; the error of the first step that fails, or of the integrity check.
    Result<Book> readAll() {
        auto opened = openBook(m_folder.book(), OpenMode::write);
        if (!opened)
            return opened.error();
        auto book = loadWhole(**opened);
        if (!book)
            return book;
        if (auto verified = (*opened)->verify(); !verified)
            return verified.error();
        return book;
    }
    BookFolder m_folder;
    std::string m_bytes;
};

constexpr std::size_t pageSize = 4096;

TEST_F(DamagedFile, APageOfRubbish) {
    RandomValues random(5);
    int named = 0;
    for (std::size_t page = 0; page * pageSize < m_bytes.size(); ++page) {
        std::string bytes = m_bytes;
        for (std::size_t i = 0; i < pageSize; ++i)
            bytes[page * pageSize + i] = static_cast<char>(random.below(256));
        writeBytes(m_folder.book(), bytes);
        const auto read = readAll();
        ASSERT_FALSE(read.ok()) << "page " << page;
        EXPECT_FALSE(read.error().sentence.empty());
        named += read.error().sentence.find("damaged") != std::string::npos ? 1 : 0;
    }
    EXPECT_GT(named, 10); // the first page makes it another kind of file
}

TEST_F(DamagedFile, CutShort) {
    for (std::size_t size = 0; size < m_bytes.size(); size += 1500) {
        writeBytes(m_folder.book(), m_bytes.substr(0, size));
        const auto read = readAll();
        EXPECT_FALSE(read.ok() && size + pageSize <= m_bytes.size()) << size << " bytes";
        // The end of the last page may be empty room, which nobody misses.
        EXPECT_TRUE(!read.ok() || *read == smallBook()) << size << " bytes";
    }
}

TEST_F(DamagedFile, SingleBitsNeverCrash) {
    RandomValues random(6);
    for (int i = 0; i < 200; ++i) {
        std::string bytes = m_bytes;
        const std::size_t at = random.below(bytes.size());
        bytes[at] = static_cast<char>(bytes[at] ^ (1 << random.below(8)));
        writeBytes(m_folder.book(), bytes);
        const auto read = readAll(); // a changed text or number is still a book
        EXPECT_TRUE(read.ok() || !read.error().sentence.empty());
    }
}

TEST_F(DamagedFile, AWordThatIsNone) {
    runRaw(m_folder.book(), "UPDATE opening SET style = 'curly' WHERE id = 43");
    const auto read = readAll();
    ASSERT_FALSE(read.ok());
    EXPECT_EQ(read.error().sentence,
        "The book file is damaged or from a newer program: the style "
        "of opening 43 is \"curly\".");
}

TEST_F(DamagedFile, AListThatIsNone) {
    runRaw(m_folder.book(), "UPDATE room SET walls = '[{\"length\": 1.5}]'");
    const auto read = readAll();
    ASSERT_FALSE(read.ok());
    EXPECT_NE(read.error().sentence.find("the walls of room 42"), std::string::npos)
        << read.error().sentence;
}

TEST_F(DamagedFile, ANumberThatIsTooLarge) {
    runRaw(m_folder.book(), "UPDATE opening SET count = 1 << 40 WHERE id = 44");
    EXPECT_FALSE(readAll().ok());
}

TEST_F(DamagedFile, ADanglingReferenceIsFound) {
    runRaw(m_folder.book(), "PRAGMA foreign_keys = OFF; DELETE FROM profile");
    const auto read = readAll();
    ASSERT_FALSE(read.ok());
    EXPECT_NE(
        read.error().sentence.find("names something that is not in the book"), std::string::npos);
}

TEST_F(DamagedFile, AJournalThatCannotBeRead) {
    runRaw(m_folder.book(), "UPDATE journal SET changes = '[{\"kind\": \"roof\"}]'");
    auto opened = openBook(m_folder.book(), OpenMode::look);
    ASSERT_TRUE(opened.ok());
    const auto journal = (*opened)->journal();
    ASSERT_FALSE(journal.ok());
    EXPECT_NE(journal.error().sentence.find("entry 1"), std::string::npos);
}

} // namespace
} // namespace miterbook
