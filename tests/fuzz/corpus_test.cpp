// SPDX-License-Identifier: GPL-3.0-or-later
// Every file that a fuzzer has found worth keeping, given to its target again; and each with its
// bytes turned about from a fixed seed, so that a build without clang does some of the same.
#include "fuzz/targets.h"
#include "support/random_values.h"

#include <gtest/gtest.h>

#include <filesystem>
#include <fstream>
#include <iterator>

namespace miterbook::fuzz {
namespace {

std::vector<std::string> corpusOf(const Target& target) {
    std::vector<std::string> files;
    const auto folder = std::filesystem::path(MITERBOOK_TEST_DIR) / "corpus"
        / std::string(target.name);
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        std::ifstream file(entry.path(), std::ios::binary);
        files.emplace_back(std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>());
    }
    std::ranges::sort(files);
    return files;
}

/// What people, programs and enemies do to a file.
std::string turnedAbout(std::string bytes, RandomValues& random) {
    static constexpr std::string_view pieces[]{"\"", ",", "\n", "\0", "1/0", "'", "-",
        "999999999999", "\xff\xfe", "½", "e308", "[[[[[[[[", "null", "=1+1"};
    const std::size_t changes = 1 + random.below(4);
    for (std::size_t i = 0; i < changes; ++i) {
        const std::size_t at = random.below(bytes.size() + 1);
        switch (random.below(4)) {
        case 0:
            bytes.insert(at, pieces[random.below(std::size(pieces))]);
            break;
        case 1:
            bytes.erase(at, 1 + random.below(8));
            break;
        case 2:
            bytes.insert(at, bytes.substr(random.below(bytes.size() + 1), random.below(40)));
            break;
        default:
            if (at < bytes.size())
                bytes[at] = static_cast<char>(random.below(256));
        }
    }
    return bytes;
}

class Corpus : public testing::TestWithParam<Target> {};

TEST_P(Corpus, IsLived) {
    const auto files = corpusOf(GetParam());
    EXPECT_GE(files.size(), 4U);
    for (const std::string& bytes : files)
        GetParam().run(bytes);
}

TEST_P(Corpus, TurnedAboutIsLivedToo) {
    RandomValues random(41);
    const int each = GetParam().name == "books" ? 6 : 60;
    for (const std::string& bytes : corpusOf(GetParam())) {
        for (int i = 0; i < each; ++i)
            GetParam().run(turnedAbout(bytes, random));
    }
}

INSTANTIATE_TEST_SUITE_P(Each, Corpus, testing::ValuesIn(targets),
    [](const auto& each) { return std::string(each.param.name); });

} // namespace
} // namespace miterbook::fuzz
