// SPDX-License-Identifier: GPL-3.0-or-later
// The ways in which a book could be lost, each tried as often as a test run can afford. The table
// of all of them, tried as often as it takes, is made by tests/durability/run.
#include "durability/bar.h"
#include "support/book_files.h"

namespace miterbook {
namespace {

void expectHolds(const Bar& bar) {
    EXPECT_GE(bar.tried, bar.wanted) << bar.what;
    for (std::size_t i = 0; i < bar.lost.size() && i < 5; ++i)
        ADD_FAILURE() << bar.what << ": " << bar.lost[i];
}

TEST(Durability, Kills) {
    expectHolds(killBar(shortExtent()));
}
TEST(Durability, FaultsOfAnEdit) {
    expectHolds(editFaultBar());
}
TEST(Durability, FaultsOfAChangeOfFormat) {
    expectHolds(formatFaultBar(5));
}
TEST(Durability, FaultsOfABackup) {
    expectHolds(backupFaultBar());
}
TEST(Durability, PowerLosses) {
    expectHolds(powerBar(shortExtent()));
}
TEST(Durability, AFullDisk) {
    expectHolds(fullDiskBar(shortExtent()));
}
TEST(Durability, TurnedBits) {
    expectHolds(bitFlipBar(shortExtent()));
}
TEST(Durability, FilesCutShort) {
    expectHolds(truncationBar(shortExtent()));
}
TEST(Durability, ZeroedPages) {
    expectHolds(zeroedPageBar(shortExtent()));
}
TEST(Durability, Salvages) {
    expectHolds(salvageBar(shortExtent()));
}
TEST(Durability, TwoPrograms) {
    expectHolds(twoProgramsBar(shortExtent()));
}
TEST(Durability, Formats) {
    expectHolds(formatsBar());
}

} // namespace
} // namespace miterbook
