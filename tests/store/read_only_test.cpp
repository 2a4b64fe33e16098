// SPDX-License-Identifier: GPL-3.0-or-later
// Books in places that cannot be written: said at opening, and they can still be looked at.
#include "support/book_files.h"

#include <filesystem>

#include <unistd.h>

namespace miterbook {
namespace {

/// Root may write anywhere; while this lives the process has the rights of nobody.
class AsNobody {
public:
    AsNobody()
        : m_root(geteuid() == 0) {
        if (m_root)
            m_changed = seteuid(65534) == 0;
    }
    ~AsNobody() {
        if (m_changed && seteuid(0) != 0)
            std::abort();
    }
    bool works() const { return !m_root || m_changed; }

private:
    bool m_root;
    bool m_changed = false;
};

using std::filesystem::perms;

class ReadOnlyPlace : public testing::Test {
protected:
    void SetUp() override { ASSERT_TRUE(createBook(m_folder.book(), smallBook()).ok()); }
    void TearDown() override { std::filesystem::permissions(m_folder.path(), perms::owner_all); }
    void allow(perms folder, perms file) {
        std::filesystem::permissions(m_folder.book(), file);
        std::filesystem::permissions(m_folder.path(), folder);
    }
    static constexpr perms readable = perms::owner_read | perms::group_read | perms::others_read;
    static constexpr perms enterable = perms::owner_exec | perms::group_exec | perms::others_exec;
    static constexpr perms writable = perms::owner_write | perms::group_write | perms::others_write;
    BookFolder m_folder;
};

TEST_F(ReadOnlyPlace, AReadOnlyFile) {
    allow(readable | enterable | writable, readable);
    const AsNobody nobody;
    ASSERT_TRUE(nobody.works());
    const auto opened = openBook(m_folder.book(), OpenMode::write);
    ASSERT_FALSE(opened.ok());
    EXPECT_EQ(opened.error().fault, Fault::storage);
    EXPECT_EQ(opened.error().sentence,
        "\"shop.miterbook\" cannot be changed: the file is "
        "read-only. It can be opened for looking only.");
    EXPECT_TRUE(openBook(m_folder.book(), OpenMode::look).ok());
}

TEST_F(ReadOnlyPlace, AReadOnlyFolder) {
    allow(readable | enterable, readable | writable);
    const AsNobody nobody;
    ASSERT_TRUE(nobody.works());
    const auto opened = openBook(m_folder.book(), OpenMode::write);
    ASSERT_FALSE(opened.ok());
    EXPECT_EQ(opened.error().sentence,
        "\"shop.miterbook\" cannot be changed: its folder is "
        "read-only. It can be opened for looking only.");
    auto looked = openBook(m_folder.book(), OpenMode::look);
    ASSERT_TRUE(looked.ok()) << looked.error().sentence;
    EXPECT_EQ(*loadWhole(**looked), smallBook());
}

TEST_F(ReadOnlyPlace, NoBookIsMadeThere) {
    allow(readable | enterable, readable);
    const AsNobody nobody;
    ASSERT_TRUE(nobody.works());
    const auto made = createBook(m_folder.file("other.miterbook"), smallBook());
    ASSERT_FALSE(made.ok());
    EXPECT_EQ(made.error().fault, Fault::storage);
}

TEST_F(ReadOnlyPlace, AFileThatMayNotBeRead) {
    allow(readable | enterable | writable, perms::none);
    const AsNobody nobody;
    ASSERT_TRUE(nobody.works());
    const auto opened = openBook(m_folder.book(), OpenMode::look);
    ASSERT_FALSE(opened.ok());
    EXPECT_EQ(opened.error().fault, Fault::storage);
}

} // namespace
} // namespace miterbook
