// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <iterator>
#include <string>

namespace miterbook {

/// Compares a text with the file approved for it. MITERBOOK_APPROVE=1 in the environment writes the
/// file instead: read the difference before it is committed.
inline void expectApproved(const std::string& text, const std::string& file) {
    const std::string path = std::string(MITERBOOK_TEST_DIR) + "/approved/" + file;
    if (std::getenv("MITERBOOK_APPROVE")) {
        std::ofstream(path, std::ios::binary) << text;
        return;
    }
    std::ifstream in(path, std::ios::binary);
    ASSERT_TRUE(in) << path << " is missing; run with MITERBOOK_APPROVE=1 to write it";
    const std::string approved{std::istreambuf_iterator<char>(in), {}};
    EXPECT_EQ(text, approved) << "differs from " << path;
}

} // namespace miterbook
