// SPDX-License-Identifier: GPL-3.0-or-later
// Backups, snapshots, check and salvage without a window.
#include "app/batch_run.h"
#include "store/book_file.h"
#include "support/billed_house.h"

#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <gtest/gtest.h>

namespace miterbook {
namespace {

class BatchSafety : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(createBook(m_book, billedHouse()).ok()); }
    void note(const std::string& book, const std::string& text) {
        auto keeper = openBook(book, OpenMode::write);
        ASSERT_TRUE(keeper.ok()) << keeper.error().sentence;
        auto workbook = Workbook::open(**keeper);
        Builder builder = *workbook->book().prices.of<Builder>().find(harrow);
        builder.note = text;
        ASSERT_TRUE(workbook->perform(putEdit(workbook->book(), "Note it", builder)).ok());
    }
    std::string noteOf(const std::string& book) {
        return (*openBook(book, OpenMode::look))->load()->prices.of<Builder>().find(harrow)->note;
    }
    void spoil(const std::string& path, qint64 at, const QByteArray& bytes) {
        QFile file(QString::fromStdString(path));
        ASSERT_TRUE(file.open(QIODevice::ReadWrite));
        file.seek(at);
        file.write(bytes);
    }
    std::string file(const char* name) {
        return m_folder.filePath(QString::fromLatin1(name)).toStdString();
    }
    BatchRun good(const std::vector<std::string>& words) {
        BatchRun run = runBatch(words);
        EXPECT_EQ(run.status, 0) << run.err;
        return run;
    }
    QTemporaryDir m_folder;
    std::string m_book = file("shop.miterbook");
};

TEST_F(BatchSafety, BackupsAreMadeListedAndPutBack) {
    EXPECT_NE(good({"backups", m_book}).out.find("There are no backups"), std::string::npos);
    const std::string first = good({"backups", m_book, "--make"}).out;
    EXPECT_NE(first.find("1 house, 1 plan; last change"), std::string::npos) << first;
    EXPECT_NE(first.find("when the book was opened"), std::string::npos) << first;
    EXPECT_NE(
        good({"backups", m_book, "--make"}).out.find("Nothing has changed"), std::string::npos);
    note(m_book, "a mistake");
    const std::string name = first.substr(0, first.find('\n'));
    const std::string restored = good({"restore", m_book, name}).out;
    EXPECT_NE(restored.find("kept as"), std::string::npos) << restored;
    EXPECT_EQ(noteOf(m_book), "");
    EXPECT_NE(good({"backups", m_book}).out.find("Note it"), std::string::npos);
}

TEST_F(BatchSafety, RestoreWantsABackupThatIsThere) {
    const BatchRun none = runBatch({"restore", m_book});
    EXPECT_EQ(none.status, 1);
    EXPECT_NE(none.err.find("`miterbook backups BOOK` lists them"), std::string::npos) << none.err;
    EXPECT_EQ(runBatch({"restore", m_book, "yesterday"}).status, 1);
}

TEST_F(BatchSafety, ASnapshotGoesOutAndComesIn) {
    const std::string carried = file("carried.miterbook");
    good({"snapshot", m_book, carried});
    EXPECT_EQ(runBatch({"take-in", m_book, carried}).status, 1) << "nothing new in it";
    note(carried, "on site");
    const std::string taken = good({"take-in", m_book, carried}).out;
    EXPECT_NE(taken.find("1 change taken in"), std::string::npos) << taken;
    EXPECT_EQ(noteOf(m_book), "on site");
}

TEST_F(BatchSafety, ASoundBookIsSaidToBe) {
    const std::string said = good({"check", m_book}).out;
    EXPECT_NE(said.find("Nothing is wrong"), std::string::npos) << said;
}

TEST_F(BatchSafety, ADamagedBookIsNamedAndSalvaged) {
    spoil(m_book, 5 * 4096, QByteArray(4096, '\0'));
    const BatchRun check = runBatch({"check", m_book});
    EXPECT_EQ(check.status, 1);
    EXPECT_NE(check.err.find("is damaged"), std::string::npos) << check.err;
    const std::string saved = file("saved.miterbook");
    EXPECT_NE(good({"salvage", m_book, saved}).out.find("rows read"), std::string::npos);
    EXPECT_EQ(good({"check", saved}).err, "");
    EXPECT_EQ(runBatch({"salvage", m_book, saved}).status, 1) << "never over another book";
}

TEST_F(BatchSafety, WhatIsNoBookIsRefused) {
    const std::string text = file("notes.txt");
    spoil(text, 0, "shopping list");
    for (const char* command : {"check", "salvage", "snapshot", "take-in", "restore"}) {
        const BatchRun run = runBatch({command, text, file("other.miterbook")});
        EXPECT_EQ(run.status, 1) << command;
        EXPECT_FALSE(run.err.empty()) << command;
    }
    EXPECT_FALSE(QFile::exists(QString::fromStdString(file("other.miterbook"))));
}

} // namespace
} // namespace miterbook
