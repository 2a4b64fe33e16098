// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/order.h"

#include "layering/made_up_tree.h"

namespace miterbook {

namespace {

using Words = std::vector<std::string>;

using OrderOfFolders = MadeUpTree;

TEST_F(OrderOfFolders, IsReadFromTheBuildFiles) {
    const FolderOrder order = readOrder(readTree(root()));
    EXPECT_EQ(order.core, (Words{"basics", "plan", "bid", "io", "store"}));
    EXPECT_EQ(order.ui, (Words{"desk", "widgets", "stages", "windows"}));
}

TEST(WordsAfter, LeavesCommentsOut) {
    const SourceFile cmake{"x", {"# set(LIST no)", "set(LIST a # b", "  c)", "set(LIST d)"}};
    EXPECT_EQ(wordsAfter(cmake, "set(LIST"), (Words{"a", "c"}));
    EXPECT_EQ(wordsAfter(cmake, "set(OTHER"), Words());
}

TEST(FolderBelow, IsTheFirstFolderOnly) {
    EXPECT_EQ(folderBelow("core/plan/room.h", "core/"), "plan");
    EXPECT_EQ(folderBelow("ui/stages/bid/parts/a.h", "ui/stages/"), "bid");
    EXPECT_EQ(folderBelow("ui/stages/stage.h", "ui/stages/"), "");
    EXPECT_EQ(folderBelow("ui/desk/desk.h", "core/"), "");
}

} // namespace

} // namespace miterbook
