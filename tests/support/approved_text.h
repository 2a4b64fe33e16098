// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

namespace miterbook {

/// Compares a text with the file that holds what was approved. MITERBOOK_APPROVE=1 in the
/// environment writes the file instead: read the difference before it is committed.
inline void expectSameAsFile(const std::string& text, const std::filesystem::path& path) {
    if (std::getenv("MITERBOOK_APPROVE")) {
        std::filesystem::create_directories(path.parent_path());
        std::ofstream(path, std::ios::binary) << text;
        return;
    }
    std::ifstream in(path, std::ios::binary);
    ASSERT_TRUE(in) << path << " is missing; run with MITERBOOK_APPROVE=1 to write it";
    const std::string approved{std::istreambuf_iterator<char>(in), {}};
    EXPECT_EQ(text, approved) << "differs from " << path;
}

/// Compares a text with approved/<file> beside the test.
inline void expectApproved(const std::string& text, const std::string& file) {
    expectSameAsFile(text, std::filesystem::path(MITERBOOK_TEST_DIR) / "approved" / file);
}

} // namespace miterbook
