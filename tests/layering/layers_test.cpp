// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/layers.h"

#include "layering/made_up_tree.h"

namespace miterbook {

namespace {

/// What the walls say of one file that includes one thing, in a tree with a file in each place.
class Walls : public MadeUpTree {
protected:
    Walls() {
        for (const char* path : {"core/basics/length.h", "core/plan/plan.h", "core/bid/bid.h",
                 "core/io/text.h", "core/store/book.h", "ui/desk/desk.h", "ui/windows/window.h",
                 "ui/stages/stage.h", "ui/stages/plan/plan_page.h", "ui/stages/bid/bid_page.h",
                 "app/wire.h", "tests/support/house.h"})
            write(path, "#pragma once\n");
    }

    std::string including(const std::string& path, const std::string& directive) {
        write(path, "// a line above\n#include " + directive + "\n");
        const std::vector<Finding> findings = brokenWalls(readTree(root()));
        if (findings.empty())
            return "fine";
        EXPECT_EQ(findings.size(), 1U) << inWords(findings);
        EXPECT_EQ(findings.front().file, path);
        EXPECT_EQ(findings.front().line, 2U);
        return findings.front().sentence;
    }
};

TEST_F(Walls, LetAFolderIncludeWhatComesBeforeIt) {
    EXPECT_EQ(including("core/bid/a.cpp", "\"plan/plan.h\""), "fine");
    EXPECT_EQ(including("core/bid/b.cpp", "<basics/length.h>"), "fine");
    EXPECT_EQ(including("core/bid/c.cpp", "\"bid.h\""), "fine");
    EXPECT_EQ(including("ui/stages/plan/a.cpp", "\"desk/desk.h\""), "fine");
    EXPECT_EQ(including("ui/stages/plan/b.cpp", "\"stages/stage.h\""), "fine");
    EXPECT_EQ(including("ui/stages/plan/c.cpp", "\"plan/plan.h\""), "fine");
    EXPECT_EQ(including("app/main.cpp", "\"store/book.h\""), "fine");
    EXPECT_EQ(including("tests/a_test.cpp", "\"support/house.h\""), "fine");
}

TEST_F(Walls, StopAFolderOfCoreThatLooksUp) {
    const char* sentence
        = "includes core/bid/bid.h, but bid comes after plan in core/CMakeLists.txt.";
    EXPECT_EQ(including("core/plan/plan.cpp", "\"bid/bid.h\""), sentence);
}

TEST_F(Walls, StopItInAngleBracketsToo) {
    EXPECT_EQ(including("core/plan/plan.cpp", "<bid/bid.h>"),
        "includes core/bid/bid.h, but bid comes after plan in core/CMakeLists.txt.");
}

TEST_F(Walls, StopItByARelativePathToo) {
    EXPECT_EQ(including("core/plan/plan.cpp", "\"../bid/bid.h\""),
        "includes core/bid/bid.h, but bid comes after plan in core/CMakeLists.txt.");
}

TEST_F(Walls, StopAFolderThatIsInNoOrder) {
    EXPECT_EQ(including("core/attic/a.cpp", "\"bid/bid.h\""),
        "core/attic is not in the order of core/CMakeLists.txt.");
}

TEST_F(Walls, StopCoreFromKnowingTheScreen) {
    EXPECT_EQ(including("core/bid/a.cpp", "\"desk/desk.h\""),
        "includes ui/desk/desk.h, but core/ knows nothing of ui/.");
}

TEST_F(Walls, StopTheProgramFromUsingTests) {
    EXPECT_EQ(including("app/main.cpp", "\"support/house.h\""),
        "includes tests/support/house.h, but app/ knows nothing of tests/.");
}

TEST_F(Walls, StopTheScreenFromReachingIntoTheStore) {
    EXPECT_EQ(including("ui/desk/desk.cpp", "\"store/book.h\""),
        "includes core/store/book.h, but ui/ talks to the Desk, never to the store.");
}

TEST_F(Walls, StopTheDeskFromKnowingTheWindows) {
    EXPECT_EQ(including("ui/desk/desk.cpp", "\"windows/window.h\""),
        "includes ui/windows/window.h, but windows comes after desk in ui/CMakeLists.txt.");
}

TEST_F(Walls, StopAStageThatIncludesAnother) {
    EXPECT_EQ(including("ui/stages/plan/plan_page.cpp", "\"stages/bid/bid_page.h\""),
        "includes ui/stages/bid/bid_page.h, but a stage never includes another.");
}

TEST_F(Walls, StopQtInCore) {
    EXPECT_EQ(including("core/plan/plan.cpp", "<QString>"),
        "includes QString, but core/ knows no Qt outside io/ and store/.");
}

TEST_F(Walls, StopQtInCoreInItsOtherForms) {
    EXPECT_NE(including("core/plan/plan.cpp", "<QtCore/QString>"), "fine");
    EXPECT_NE(including("core/plan/plan.cpp", "\"QString\""), "fine");
    EXPECT_NE(including("core/plan/plan.cpp", "<QtGlobal>"), "fine");
    EXPECT_NE(including("core/plan/plan.cpp", "<QtCore>"), "fine");
}

TEST_F(Walls, LetInOutAndStoreUseQt) {
    EXPECT_EQ(including("core/io/a.cpp", "<QFile>"), "fine");
    EXPECT_EQ(including("core/store/a.cpp", "<QSqlQuery>"), "fine");
    EXPECT_EQ(including("core/store/b.cpp", "<sqlite3.h>"), "fine");
}

TEST_F(Walls, StopTheDatabaseOutsideTheStore) {
    EXPECT_EQ(including("core/io/a.cpp", "<QSqlQuery>"),
        "includes QSqlQuery, but only core/store/ knows the database.");
}

TEST_F(Walls, StopTheDatabaseOnTheScreen) {
    EXPECT_EQ(including("ui/desk/desk.cpp", "<sqlite3.h>"),
        "includes sqlite3.h, but only core/store/ knows the database.");
}

} // namespace

} // namespace miterbook
