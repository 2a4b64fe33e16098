// SPDX-License-Identifier: GPL-3.0-or-later
// Backups: when one is due, that it is a whole book, what the list says, going back to one.
#include "store/safety/restore.h"
#include "store/safety/safety_kit.h"
#include "store/safety/soundness.h"
#include "support/raw_sql.h"

namespace miterbook {
namespace {

class Backups : public SafeBook {
protected:
    std::optional<Backup> due(BackupReason reason) {
        auto made = backUpIfDue(m_path, reason, m_clock);
        EXPECT_TRUE(made.ok()) << (made ? "" : made.error().sentence);
        return made ? *made : std::nullopt;
    }
};

TEST_F(Backups, ThereAreNoneAtFirst) {
    EXPECT_TRUE(backupsOf(m_path).empty());
}

TEST_F(Backups, OnOpeningOneIsDueWhenSomethingHasChanged) {
    const auto first = due(BackupReason::opened);
    ASSERT_TRUE(first);
    EXPECT_FALSE(due(BackupReason::opened)) << "nothing has changed";
    note("calls back");
    m_clock.goOn(1);
    const auto second = due(BackupReason::opened);
    ASSERT_TRUE(second);
    EXPECT_EQ(noteOf(second->path), "calls back");
    EXPECT_EQ(noteOf(first->path), "");
    EXPECT_EQ(backupsOf(m_path), (std::vector{*second, *first}));
}

TEST_F(Backups, DailyThereIsOneADay) {
    ASSERT_TRUE(due(BackupReason::daily));
    note("same day");
    EXPECT_FALSE(due(BackupReason::daily));
    m_clock.goOn(1);
    EXPECT_TRUE(due(BackupReason::daily));
    m_clock.goOn(1);
    EXPECT_FALSE(due(BackupReason::daily)) << "nothing has changed";
}

TEST_F(Backups, AreMadeWhileTheBookIsBeingWritten) {
    edit([&](Workbook& workbook) {
        Builder builder = *workbook.book().prices.of<Builder>().find(harrow);
        for (int n = 0; n < 5; ++n) {
            builder.note = std::to_string(n);
            ASSERT_TRUE(workbook.perform(putEdit(workbook.book(), "Note", builder)).ok());
            const auto made = makeBackup(m_path, BackupReason::daily, m_clock);
            ASSERT_TRUE(made.ok()) << made.error().sentence;
            EXPECT_EQ(noteOf(made->path), builder.note);
        }
    });
}

TEST_F(Backups, SayWhatTheyHold) {
    const auto made = due(BackupReason::opened);
    const auto held = readSummary(made->path);
    ASSERT_TRUE(held.ok()) << held.error().sentence;
    EXPECT_EQ(held->houses, 1);
    EXPECT_EQ(held->plans, 1);
    EXPECT_EQ(held->edits, 3);
    EXPECT_EQ(held->lastAt.substr(0, 10), "2026-03-20");
    EXPECT_FALSE(held->lastSentence.empty());
    EXPECT_EQ(held->format, formatOf(schemaSteps()));
}

TEST_F(Backups, ADamagedBookGivesNoneAndKeepsTheGoodOnes) {
    const auto good = due(BackupReason::opened);
    runRaw(m_path, "UPDATE issued_paper SET paper = replace(paper, 'Lot 7', 'Lot 8')");
    note("after the damage");
    const auto made = backUpIfDue(m_path, BackupReason::opened, m_clock);
    ASSERT_FALSE(made.ok());
    EXPECT_NE(made.error().sentence.find("Invoice 1 is not what was issued"), std::string::npos)
        << made.error().sentence;
    EXPECT_EQ(backupsOf(m_path), std::vector{*good});
}

TEST_F(Backups, ACopyThatIsStoppedLeavesNothing) {
    const auto made = makeBackup(m_path, BackupReason::daily, m_clock, [] { return false; });
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.error().fault, Fault::cancelled);
    EXPECT_TRUE(std::filesystem::is_empty(backupFolder(m_path)));
}

TEST_F(Backups, OldOnesGo) {
    Retention strict{2, 1, 1, 1};
    for (int n = 0; n < 6; ++n) {
        note(std::to_string(n));
        ASSERT_TRUE(backUpIfDue(m_path, BackupReason::opened, m_clock, strict).ok());
    }
    const auto left = backupsOf(m_path);
    ASSERT_EQ(left.size(), 2U);
    EXPECT_EQ(noteOf(left[0].path), "5");
    EXPECT_EQ(noteOf(left[1].path), "4");
}

TEST_F(Backups, OtherFilesInTheFolderStay) {
    std::filesystem::create_directories(backupFolder(m_path));
    writeBytes(backupFolder(m_path) + "/notes.txt", "mine");
    Retention none{1, 0, 0, 0};
    for (int n = 0; n < 3; ++n) {
        note(std::to_string(n));
        ASSERT_TRUE(backUpIfDue(m_path, BackupReason::opened, m_clock, none).ok());
    }
    EXPECT_EQ(bytesOf(backupFolder(m_path) + "/notes.txt"), "mine");
}

TEST_F(Backups, GoingBackKeepsWhatWasThere) {
    const auto old = due(BackupReason::opened);
    note("a mistake");
    const auto restored = replaceBook(m_path, old->path, m_clock);
    ASSERT_TRUE(restored.ok()) << restored.error().sentence;
    EXPECT_EQ(noteOf(m_path), "");
    ASSERT_TRUE(restored->former);
    EXPECT_EQ(restored->former->reason, BackupReason::replaced);
    EXPECT_EQ(noteOf(restored->former->path), "a mistake");
    ASSERT_TRUE(replaceBook(m_path, restored->former->path, m_clock).ok()) << "and forth again";
    EXPECT_EQ(noteOf(m_path), "a mistake");
}

TEST_F(Backups, GoingBackFromADamagedBookKeepsItsBytes) {
    const auto old = due(BackupReason::opened);
    const std::string rubbish(5000, 'x');
    writeBytes(m_path, rubbish);
    writeBytes(m_path + "-journal", "left behind");
    const auto restored = replaceBook(m_path, old->path, m_clock);
    ASSERT_TRUE(restored.ok()) << restored.error().sentence;
    EXPECT_EQ(restored->former->reason, BackupReason::damaged);
    EXPECT_EQ(bytesOf(restored->former->path), rubbish);
    EXPECT_EQ(bytesOf(restored->former->path + "-journal"), "left behind");
    EXPECT_FALSE(std::filesystem::exists(m_path + "-journal"));
    EXPECT_TRUE(checkSoundness(m_path).ok());
}

TEST_F(Backups, ADamagedBackupIsNotPutBack) {
    const auto old = due(BackupReason::opened);
    std::string bytes = bytesOf(old->path);
    bytes.resize(bytes.size() / 2);
    writeBytes(old->path, bytes);
    const std::string before = bytesOf(m_path);
    const auto restored = replaceBook(m_path, old->path, m_clock);
    ASSERT_FALSE(restored.ok());
    EXPECT_EQ(bytesOf(m_path), before);
}

TEST_F(Backups, ABookThatIsOpenIsNotReplaced) {
    const auto old = due(BackupReason::opened);
    const auto keeper = openBook(m_path, OpenMode::write);
    const auto restored = replaceBook(m_path, old->path, m_clock);
    ASSERT_FALSE(restored.ok());
    EXPECT_EQ(restored.error().fault, Fault::conflict);
}

TEST_F(Backups, ABookThatIsGoneComesBack) {
    const auto old = due(BackupReason::opened);
    std::filesystem::remove(m_path);
    const auto restored = replaceBook(m_path, old->path, m_clock);
    ASSERT_TRUE(restored.ok()) << restored.error().sentence;
    EXPECT_FALSE(restored->former);
    EXPECT_EQ(noteOf(m_path), "");
}

} // namespace
} // namespace miterbook
