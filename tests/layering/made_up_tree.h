// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <fstream>
#include <gtest/gtest.h>
#include <string>
#include <unistd.h>

namespace miterbook {

/// A project of two or three files in a folder of its own that goes away with the test.
class MadeUpTree : public testing::Test {
protected:
    MadeUpTree() {
        const auto* info = testing::UnitTest::GetInstance()->current_test_info();
        m_root = std::filesystem::temp_directory_path()
            / ("layering-" + std::string(info->name()) + '-' + std::to_string(::getpid()));
        write("core/CMakeLists.txt",
            "set(MITERBOOK_CORE_ORDER\n  basics\n  plan # the plan\n"
            "  bid\n  io\n  store)\n");
        write("ui/CMakeLists.txt", "foreach(folder desk widgets stages windows)\n");
    }
    ~MadeUpTree() override { std::filesystem::remove_all(m_root); }

    void write(const std::string& path, const std::string& text) {
        const std::filesystem::path file = m_root / path;
        std::filesystem::create_directories(file.parent_path());
        std::ofstream(file) << text;
    }
    const std::filesystem::path& root() const { return m_root; }

private:
    std::filesystem::path m_root;
};

} // namespace miterbook
