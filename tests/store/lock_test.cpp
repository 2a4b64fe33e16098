// SPDX-License-Identifier: GPL-3.0-or-later
// One program at a time holds a book for writing.
#include "job/workbook.h"
#include "support/book_files.h"
#include "support/writer_process.h"

#include <filesystem>

#include <unistd.h>

namespace miterbook {
namespace {

class Lock : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(createBook(m_folder.book(), smallBook()).ok()); }
    BookFolder m_folder;
};

TEST_F(Lock, TheSecondIsToldWhoHoldsTheBook) {
    const auto first = openBook(m_folder.book(), OpenMode::write);
    ASSERT_TRUE(first.ok()) << first.error().sentence;
    const auto second = openBook(m_folder.book(), OpenMode::write);
    ASSERT_FALSE(second.ok());
    EXPECT_EQ(second.error().fault, Fault::conflict);
    const std::string process = "process " + std::to_string(getpid());
    EXPECT_NE(second.error().sentence.find(process), std::string::npos) << second.error().sentence;
    EXPECT_NE(second.error().sentence.find(" since 20"), std::string::npos)
        << second.error().sentence;
}

/// A program of another machine cannot be asked whether it is still there.
TEST_F(Lock, OfAnotherMachineStaysAndTheWayOutIsSaid) {
    writeBytes(m_folder.book() + ".lock", "4711\nmiterbook\nbench-2\n\n\n");
    const auto refused = openBook(m_folder.book(), OpenMode::write);
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(refused.error().fault, Fault::conflict);
    for (const char* part : {"miterbook of ", " on bench-2 since ", "(process 4711)",
             "remove the file \"shop.miterbook.lock\""})
        EXPECT_NE(refused.error().sentence.find(part), std::string::npos)
            << part << " in " << refused.error().sentence;
    EXPECT_TRUE(openBook(m_folder.book(), OpenMode::look).ok());
}

TEST_F(Lock, TheSecondMayLookWhileTheFirstWrites) {
    auto first = openBook(m_folder.book(), OpenMode::write);
    auto second = openBook(m_folder.book(), OpenMode::look);
    ASSERT_TRUE(second.ok()) << second.error().sentence;
    Builder builder;
    builder.id = Id<Builder>(60);
    builder.name = "Marlow";
    ASSERT_TRUE((*first)->write({"Add", {{std::nullopt, AnyRow(builder)}}}).ok());
    EXPECT_EQ((*second)->load()->prices.of<Builder>().size(), 2U);
}

TEST_F(Lock, AnotherSpellingIsTheSameBook) {
    const auto first = openBook(m_folder.book(), OpenMode::write);
    const std::string link = m_folder.file("link.miterbook");
    std::filesystem::create_symlink(m_folder.book(), link);
    const auto second = openBook(link, OpenMode::write);
    ASSERT_FALSE(second.ok());
    EXPECT_EQ(second.error().fault, Fault::conflict);
}

TEST_F(Lock, IsLetGo) {
    {
        const auto first = openBook(m_folder.book(), OpenMode::write);
        ASSERT_TRUE(first.ok());
    }
    EXPECT_TRUE(openBook(m_folder.book(), OpenMode::write).ok());
}

TEST_F(Lock, OfAProgramThatDiedIsTakenOver) {
    WriterProcess writer(m_folder.book());
    ASSERT_GE(writer.readAcknowledged(1), 1);
    const auto refused = openBook(m_folder.book(), OpenMode::write);
    ASSERT_FALSE(refused.ok());
    writer.kill();
    const auto opened = openBook(m_folder.book(), OpenMode::write);
    EXPECT_TRUE(opened.ok()) << opened.error().sentence;
}

} // namespace
} // namespace miterbook
