// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/includes.h"
#include "layering/layers.h"
#include "layering/layout_rules.h"

#include <algorithm>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

const std::vector<SourceFile>& thisTree() {
    static const std::vector<SourceFile> files = readTree(MITERBOOK_SOURCE_DIR);
    return files;
}

TEST(ThisTree, IsReadWhole) {
    const auto& files = thisTree();
    EXPECT_GT(files.size(), 100U);
    EXPECT_TRUE(std::ranges::any_of(files, [](const SourceFile& file) {
        return file.path == "core/basics/length.h" && !includesOf(file).empty();
    }));
}

TEST(ThisTree, EveryFolderOfCoreIsInTheOrder) {
    const FolderOrder order = readOrder(thisTree());
    ASSERT_FALSE(order.core.empty());
    for (const SourceFile& file : thisTree()) {
        const std::string folder = folderBelow(file.path, "core/");
        EXPECT_TRUE(folder.empty() || std::ranges::count(order.core, folder) == 1) << file.path;
    }
}

TEST(ThisTree, BreaksNoWall) {
    EXPECT_EQ(inWords(brokenWalls(thisTree())), "");
}

TEST(ThisTree, IsLaidOutByTheRules) {
    EXPECT_EQ(inWords(badLayout(thisTree())), "");
}

} // namespace

} // namespace miterbook
