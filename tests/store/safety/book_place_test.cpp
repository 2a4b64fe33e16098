// SPDX-License-Identifier: GPL-3.0-or-later
// Folders that other machines see too.
#include "store/safety/book_place.h"
#include "support/book_files.h"

#include <filesystem>

namespace miterbook {
namespace {

class Place : public testing::Test {
protected:
    void SetUp() override {
        std::filesystem::create_directories(m_folder.file("kept/books"));
        writeBytes(m_book, "a book");
    }
    BookFolder m_folder;
    std::string m_book = m_folder.file("kept/books/shop.miterbook");
};

TEST_F(Place, OfAnOrdinaryFolderNothingIsSaid) {
    EXPECT_EQ(placeOf(m_book), BookPlace());
    EXPECT_EQ(placeWarning(placeOf(m_book)), "");
    EXPECT_EQ(placeOf(m_folder.file("none.miterbook")), BookPlace());
}

TEST_F(Place, ASyncedFolderIsKnownByItsMarkFromAnyDepth) {
    writeBytes(m_folder.file("kept/.csync_journal.db"), "");
    EXPECT_TRUE(placeOf(m_book).synced);
    EXPECT_NE(placeWarning(placeOf(m_book)).find("copied to other machines"), std::string::npos);
    std::filesystem::create_symlink(m_book, m_folder.file("link.miterbook"));
    EXPECT_TRUE(placeOf(m_folder.file("link.miterbook")).synced) << "where it really lies";
}

TEST_F(Place, MarksWithANumberAreKnown) {
    writeBytes(m_folder.file("kept/books/.sync_0a1b2c.db"), "");
    EXPECT_TRUE(placeOf(m_book).synced);
}

TEST_F(Place, CopiesBesideItAreNamed) {
    writeBytes(m_folder.file("kept/books/shop (conflicted copy).miterbook"), "");
    writeBytes(m_folder.file("kept/books/shop.sync-conflict-1.miterbook"), "");
    writeBytes(m_folder.file("kept/books/other conflict.txt"), "");
    const BookPlace place = placeOf(m_book);
    ASSERT_EQ(place.strays.size(), 2U);
    const std::string warning = placeWarning(place);
    EXPECT_NE(warning.find("\"shop (conflicted copy).miterbook\" and 1 more"), std::string::npos)
        << warning;
}

TEST_F(Place, NetworkDrives) {
    for (const char* kind : {"nfs4", "cifs", "smb3", "fuse.sshfs"})
        EXPECT_TRUE(isNetworkDrive(kind)) << kind;
    for (const char* kind : {"ext4", "btrfs", "tmpfs", "fuse.ntfs-3g", "xfs", ""})
        EXPECT_FALSE(isNetworkDrive(kind)) << kind;
    EXPECT_NE(placeWarning({true, false, {}}).find("network drive"), std::string::npos);
}

} // namespace
} // namespace miterbook
