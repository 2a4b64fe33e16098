// SPDX-License-Identifier: GPL-3.0-or-later
// The program itself, as it is installed: it never opens a network's socket, and its desktop makes
// backups.
#include "program/guarded_program.h"

#include <gtest/gtest.h>

#include <csignal>
#include <filesystem>
#include <fstream>
#include <thread>

#include <sys/socket.h>
#include <unistd.h>

namespace miterbook {
namespace {

using Path = std::filesystem::path;

class Program : public testing::Test {
protected:
    void SetUp() override {
        std::filesystem::create_directories(m_folder);
        setenv("XDG_CONFIG_HOME", (m_folder / "config").c_str(), 1);
        ASSERT_EQ(run({"new", book(), "--shop", "Lindqvist Trim"}), 0);
        ASSERT_EQ(run({"bring", book(), sample("wren/wren.miterplan")}), 0);
        ASSERT_EQ(run({"start", book(), "--plan", "Wren", "--house", "Lot 3"}), 0);
    }
    void TearDown() override { std::filesystem::remove_all(m_folder); }

    std::string book() const { return m_folder / "shop.miterbook"; }
    std::string file(const char* name) const { return m_folder / name; }
    static std::string sample(const char* path) {
        return std::string(MITERBOOK_SOURCE_DIR) + "/sample-jobs/" + path;
    }
    static std::vector<std::string> words(std::vector<std::string> arguments) {
        arguments.insert(arguments.begin(), MITERBOOK_PROGRAM);
        return arguments;
    }
    static int run(const std::vector<std::string>& arguments) {
        return GuardedProgram(words(arguments)).wait();
    }

    Path m_folder = std::filesystem::temp_directory_path()
        / ("miterbook-program-" + std::to_string(getpid()));
};

TEST_F(Program, TheGuardKillsWhoeverAsksForANetwork) {
    for (const int family : {AF_INET, AF_INET6}) {
        GuardedProgram asking([&] {
            socket(family, SOCK_STREAM, 0);
            _exit(0);
        });
        EXPECT_EQ(asking.wait(), -SIGSYS) << family;
    }
    GuardedProgram local([] {
        const int made = socket(AF_UNIX, SOCK_STREAM, 0);
        _exit(made >= 0 ? 7 : 1);
    });
    EXPECT_EQ(local.wait(), 7);
}

TEST_F(Program, BatchCommandsOpenNoSocket) {
    for (const char* paper : {"bid", "takeoff", "order", "plan"}) {
        EXPECT_EQ(run({"print", paper, book(), "--house", "Lot 3", "--pdf", file("paper.pdf")}), 0)
            << paper;
    }
    EXPECT_EQ(run({"list", book()}), 0);
    EXPECT_EQ(run({"journal", book(), "--csv", file("lines.csv")}), 0);
    EXPECT_EQ(run({"backups", book(), "--make"}), 0);
    EXPECT_EQ(run({"snapshot", book(), file("carried.miterbook")}), 0);
    EXPECT_EQ(run({"check", book()}), 0);
    EXPECT_EQ(run({"salvage", book(), file("saved.miterbook")}), 0);
}

/// Waits for something that the desktop does; gives up when it ends or after a minute.
template <class Done>
bool waitFor(GuardedProgram& program, Done done) {
    constexpr int mostTries = 3000;
    for (int i = 0; i < mostTries && program.runs(); ++i) {
        if (done())
            return true;
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    return done();
}

bool hasBackup(const Path& folder) {
    if (!std::filesystem::exists(folder))
        return false;
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        if (entry.path().extension() == ".miterbook")
            return true;
    }
    return false;
}

TEST_F(Program, TheDesktopMakesABackupAndOpensNoSocket) {
    GuardedProgram desktop(words({book()}));
    EXPECT_TRUE(waitFor(desktop, [&] { return hasBackup(book() + ".backups"); }));
    EXPECT_TRUE(std::filesystem::exists(book() + ".lock")) << "it holds the book";
    EXPECT_EQ(run({"start", book(), "--plan", "Wren", "--house", "Lot 4"}), 1)
        << "and nobody else writes it";
    EXPECT_EQ(run({"list", book()}), 0) << "but may look";
    EXPECT_EQ(desktop.stop(), -SIGTERM);
    EXPECT_EQ(run({"check", book()}), 0);
}

} // namespace
} // namespace miterbook
