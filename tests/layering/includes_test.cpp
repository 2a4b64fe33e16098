// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/includes.h"

#include <gtest/gtest.h>

namespace miterbook {

namespace {

TEST(IncludesOf, FindsQuotesAndAngles) {
    const SourceFile file{"core/plan/plan.cpp",
        {"#include \"plan/plan.h\"", "", "  #  include   <basics/id.h> // why",
            "#include<vector>"}};
    EXPECT_EQ(includesOf(file),
        (std::vector<Include>{
            {1, "plan/plan.h", true}, {3, "basics/id.h", false}, {4, "vector", false}}));
}

TEST(IncludesOf, LeavesCommentsAndOtherDirectivesAlone) {
    const SourceFile file{"core/plan/plan.cpp",
        {"// #include \"bid/bid.h\"", "#define include \"x.h\"", "#include NAME", "#include \"open",
            "include \"bid/bid.h\"", "#"}};
    EXPECT_TRUE(includesOf(file).empty());
}

class Resolving : public testing::Test {
protected:
    std::string resolved(const std::string& path, bool quoted, const std::string& from) const {
        return m_resolver.resolve({1, path, quoted}, {from, {}});
    }

private:
    IncludeResolver m_resolver{{{"core/plan/room.h", {}}, {"core/bid/room.h", {}},
        {"core/bid/bid.h", {}}, {"ui/desk/desk.h", {}}, {"ui/stages/plan/page.h", {}}}};
};

TEST_F(Resolving, TakesTheFileBesideFirstButOnlyInQuotes) {
    EXPECT_EQ(resolved("room.h", true, "core/bid/bid.cpp"), "core/bid/room.h");
    EXPECT_EQ(resolved("room.h", false, "core/bid/bid.cpp"), "");
    EXPECT_EQ(resolved("../plan/room.h", true, "core/bid/bid.cpp"), "core/plan/room.h");
    EXPECT_EQ(resolved("../../core/bid/./bid.h", true, "core/plan/a.cpp"), "core/bid/bid.h");
}

TEST_F(Resolving, LooksBelowEachTopFolder) {
    EXPECT_EQ(resolved("bid/bid.h", false, "core/plan/a.cpp"), "core/bid/bid.h");
    EXPECT_EQ(resolved("desk/desk.h", true, "ui/stages/plan/page.cpp"), "ui/desk/desk.h");
    EXPECT_EQ(resolved("core/bid/bid.h", true, "ui/desk/desk.cpp"), "core/bid/bid.h");
}

TEST_F(Resolving, KnowsAFolderOfCoreEvenWithoutTheFile) {
    EXPECT_EQ(resolved("bid/made_later.h", true, "core/plan/a.cpp"), "core/bid/made_later.h");
    EXPECT_EQ(resolved("vector", false, "core/plan/a.cpp"), "");
    EXPECT_EQ(resolved("QtCore/QString", false, "core/plan/a.cpp"), "");
}

} // namespace

} // namespace miterbook
