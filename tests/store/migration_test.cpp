// SPDX-License-Identifier: GPL-3.0-or-later
// An older book is copied, then brought up; a failure on the way leaves it as it was.
#include "store/safety/backups.h"
#include "support/book_files.h"
#include "support/raw_sql.h"

#include <filesystem>

namespace miterbook {
namespace {

std::vector<SchemaStep> stepsWith(std::string_view second) {
    std::vector<SchemaStep> steps = schemaSteps();
    steps.push_back({formatOf(steps) + 1, second});
    return steps;
}

class Migration : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(createBook(m_folder.book(), smallBook()).ok());
        m_before = bytesOf(m_folder.book());
        m_format = formatOf(schemaSteps());
    }
    /// The backups, latest first; those of one second by their names.
    std::vector<Backup> backUps() const { return backupsOf(m_folder.book()); }
    BookFolder m_folder;
    std::string m_before;
    int m_format = 0;
};

constexpr std::string_view hours = "CREATE TABLE hours (id INTEGER PRIMARY KEY) STRICT;\n"
                                   "ALTER TABLE burden ADD COLUMN more TEXT;\n";

TEST_F(Migration, CopiesThenBringsUp) {
    const auto steps = stepsWith(hours);
    auto opened = openBookWith(steps, m_folder.book(), OpenMode::write);
    ASSERT_TRUE(opened.ok()) << opened.error().sentence;
    EXPECT_EQ(*loadWhole(**opened), smallBook());
    opened->reset();
    EXPECT_EQ(runRaw(m_folder.book(), "SELECT format FROM book_info").front(),
        std::to_string(m_format + 1));
    EXPECT_TRUE(openBookWith(steps, m_folder.book(), OpenMode::write).ok()); // its schema is known
    ASSERT_EQ(backUps().size(), 1U);
    EXPECT_EQ(backUps().front().reason, BackupReason::olderFormat);
    auto old = openBook(backUps().front().path, OpenMode::look);
    ASSERT_TRUE(old.ok()) << old.error().sentence;
    EXPECT_EQ(*loadWhole(**old), smallBook());
}

TEST_F(Migration, BroughtUpItIsTooNewForTheOlderProgram) {
    ASSERT_TRUE(openBookWith(stepsWith(hours), m_folder.book(), OpenMode::write).ok());
    const auto opened = openBook(m_folder.book(), OpenMode::write);
    ASSERT_FALSE(opened.ok());
    EXPECT_EQ(opened.error().fault, Fault::notOurs);
}

TEST_F(Migration, AStepThatFailsLeavesTheBookAsItWas) {
    const auto steps = stepsWith("CREATE TABLE hours (id INTEGER PRIMARY KEY) STRICT;\n"
                                 "INSERT INTO nowhere VALUES (1);\n");
    ASSERT_FALSE(openBookWith(steps, m_folder.book(), OpenMode::write).ok());
    EXPECT_EQ(bytesOf(m_folder.book()), m_before);
    EXPECT_TRUE(openBook(m_folder.book(), OpenMode::write).ok());
}

TEST_F(Migration, ForLookingAnOlderBookIsNotTouched) {
    const auto opened = openBookWith(stepsWith(hours), m_folder.book(), OpenMode::look);
    ASSERT_FALSE(opened.ok());
    EXPECT_EQ(bytesOf(m_folder.book()), m_before);
    EXPECT_TRUE(backUps().empty());
}

TEST_F(Migration, AnEarlierCopyIsKept) {
    const FixedClock clock{Date(std::chrono::year(2026) / 11 / 25)};
    std::filesystem::create_directories(backupFolder(m_folder.book()));
    const std::string earlier = backupFolder(m_folder.book()) + "/"
        + backupName(clock.timestamp(), BackupReason::olderFormat);
    writeBytes(earlier, "an earlier copy");
    ASSERT_TRUE(
        openBookWith(stepsWith(hours), m_folder.book(), OpenMode::write, {&clock, {}}).ok());
    EXPECT_EQ(bytesOf(earlier), "an earlier copy");
    ASSERT_EQ(backUps().size(), 2U);
    EXPECT_TRUE(openBook(backUps().front().path, OpenMode::look).ok()
        || openBook(backUps().back().path, OpenMode::look).ok());
}

} // namespace
} // namespace miterbook
