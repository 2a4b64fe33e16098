// SPDX-License-Identifier: GPL-3.0-or-later
// A book carried to another machine and back.
#include "store/safety/safety_kit.h"
#include "store/safety/snapshot.h"

namespace miterbook {
namespace {

class Snapshot : public SafeBook {
protected:
    void SetUp() override {
        SafeBook::SetUp();
        const auto written = writeSnapshot(m_path, m_snapshot);
        ASSERT_TRUE(written.ok()) << written.error().sentence;
    }
    /// Works on the snapshot as the other machine would.
    void noteThere(const std::string& text) {
        std::swap(m_path, m_snapshot);
        note(text);
        std::swap(m_path, m_snapshot);
    }
    void expectRefused(const std::string& part) {
        const std::string before = bytesOf(m_path);
        const auto taken = takeInSnapshot(m_path, m_snapshot, m_clock);
        ASSERT_FALSE(taken.ok());
        EXPECT_NE(taken.error().sentence.find(part), std::string::npos) << taken.error().sentence;
        EXPECT_EQ(bytesOf(m_path), before);
    }
    std::string m_snapshot = m_folder.file("carried.miterbook");
};

TEST_F(Snapshot, IsTheWholeBook) {
    EXPECT_EQ(whole(m_snapshot), whole(m_path));
}

TEST_F(Snapshot, IsNotWrittenOverAnotherFile) {
    EXPECT_FALSE(writeSnapshot(m_path, m_snapshot).ok());
}

TEST_F(Snapshot, ComesBackWithWhatWasDoneElsewhere) {
    noteThere("measured on site");
    noteThere("and once more");
    const auto taken = takeInSnapshot(m_path, m_snapshot, m_clock);
    ASSERT_TRUE(taken.ok()) << taken.error().sentence;
    EXPECT_EQ(taken->lineage, (Lineage{Kinship::ahead, 0, 2}));
    EXPECT_EQ(noteOf(m_path), "and once more");
    EXPECT_EQ(noteOf(taken->replaced.former->path), "");
}

TEST_F(Snapshot, WithNothingNewIsNotTaken) {
    expectRefused("holds already");
}

TEST_F(Snapshot, ThatIsOlderIsNotTaken) {
    note("here");
    expectRefused("is older than \"shop.miterbook\", which has 1 change more");
}

TEST_F(Snapshot, OfABookChangedInBothPlacesIsNotTaken) {
    note("here");
    noteThere("there");
    noteThere("there again");
    expectRefused("2 changes there, 1 change here");
}

TEST_F(Snapshot, OfAnotherBookIsNotTaken) {
    std::filesystem::remove(m_snapshot);
    m_clock.goOn(3);
    ASSERT_TRUE(createBook(m_snapshot, billedHouse(), {&m_clock, {}}).ok());
    expectRefused("another book");
}

TEST_F(Snapshot, WhereItPartedIsFoundAmongManyEdits) {
    for (int n = 0; n < 9; ++n)
        note("common " + std::to_string(n));
    std::filesystem::remove(m_snapshot);
    ASSERT_TRUE(writeSnapshot(m_path, m_snapshot).ok());
    for (int n = 0; n < 4; ++n)
        note("here " + std::to_string(n));
    for (int n = 0; n < 7; ++n)
        noteThere("there " + std::to_string(n));
    const auto ours = openForReading(m_path);
    const auto theirs = openForReading(m_snapshot);
    EXPECT_EQ(*compareLineage(*ours, *theirs), (Lineage{Kinship::parted, 4, 7}));
    EXPECT_EQ(*compareLineage(*theirs, *ours), (Lineage{Kinship::parted, 7, 4}));
    EXPECT_EQ(*compareLineage(*ours, *ours), (Lineage{Kinship::same, 0, 0}));
}

} // namespace
} // namespace miterbook
