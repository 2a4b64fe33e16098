// SPDX-License-Identifier: GPL-3.0-or-later
// Files that are not books of ours are refused with a sentence and left as they are.
#include "store/schema.h"
#include "support/book_files.h"
#include "support/raw_sql.h"

namespace miterbook {
namespace {

class ForeignFile : public testing::Test {
protected:
    /// A book of ours with something done to it behind our back.
    void makeBook(const std::string& sql = {}) {
        ASSERT_TRUE(createBook(m_folder.book(), smallBook()).ok());
        if (!sql.empty())
            runRaw(m_folder.book(), sql);
    }
    void expectRefused(const std::string& part) {
        const std::string before = bytesOf(m_folder.book());
        for (const OpenMode mode : {OpenMode::write, OpenMode::look}) {
            const auto opened = openBook(m_folder.book(), mode);
            ASSERT_FALSE(opened.ok());
            EXPECT_EQ(opened.error().fault, Fault::notOurs) << opened.error().sentence;
            EXPECT_NE(opened.error().sentence.find(part), std::string::npos)
                << opened.error().sentence;
        }
        EXPECT_EQ(bytesOf(m_folder.book()), before);
    }
    BookFolder m_folder;
};

TEST_F(ForeignFile, ZeroBytes) {
    writeBytes(m_folder.book(), "");
    expectRefused("the file is empty");
}

TEST_F(ForeignFile, Text) {
    writeBytes(m_folder.book(), "Dear builder,\n" + std::string(500, '.'));
    expectRefused("another kind of file");
}

TEST_F(ForeignFile, TooShortForAHeader) {
    writeBytes(m_folder.book(), "SQLite format 3");
    expectRefused("another kind of file");
}

TEST_F(ForeignFile, AnotherProgramsDatabase) {
    runRaw(m_folder.book(), "CREATE TABLE stick (id INTEGER PRIMARY KEY)");
    expectRefused("a database of another program");
}

TEST_F(ForeignFile, ANewerBookIsLeftAsItIs) {
    makeBook("PRAGMA user_version = 999");
    expectRefused("newer version of Miterbook (format 999; this one reads up to "
        + std::to_string(formatOf(schemaSteps())) + ")");
}

TEST_F(ForeignFile, ABookThatWasNeverFinished) {
    makeBook("PRAGMA user_version = 0");
    expectRefused("never finished");
}

TEST_F(ForeignFile, AnAddedTrigger) {
    makeBook("CREATE TRIGGER spy AFTER UPDATE ON stick BEGIN DELETE FROM journal; END");
    expectRefused("somebody added the trigger spy");
}

TEST_F(ForeignFile, AnAddedView) {
    makeBook("CREATE VIEW cheap AS SELECT * FROM stick");
    expectRefused("somebody added the view cheap");
}

TEST_F(ForeignFile, AnAddedTable) {
    makeBook("CREATE TABLE notes (text TEXT)");
    expectRefused("somebody added the table notes");
}

TEST_F(ForeignFile, AMissingTable) {
    makeBook("DROP TABLE burden");
    expectRefused("the table burden is missing");
}

TEST_F(ForeignFile, AChangedTable) {
    makeBook("ALTER TABLE burden ADD COLUMN extra TEXT");
    expectRefused("somebody changed the table burden");
}

TEST_F(ForeignFile, AFolder) {
    ASSERT_FALSE(openBook(m_folder.path(), OpenMode::write).ok());
}

TEST_F(ForeignFile, ThePlannersStatisticsAreNothingForeign) {
    makeBook("ANALYZE");
    EXPECT_TRUE(openBook(m_folder.book(), OpenMode::write).ok());
}

TEST_F(ForeignFile, AWriteAheadLogIsTakenBack) {
    makeBook("PRAGMA journal_mode = WAL");
    auto opened = openBook(m_folder.book(), OpenMode::write);
    ASSERT_TRUE(opened.ok()) << opened.error().sentence;
    EXPECT_EQ(*loadWhole(**opened), smallBook());
    EXPECT_EQ(bytesOf(m_folder.book())[18], 1); // file format "legacy": rollback journal
}

} // namespace
} // namespace miterbook
