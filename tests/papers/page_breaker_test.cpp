// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/page_breaker.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

Slab slab(double height, bool keep = false, double before = 0) {
    Slab result;
    result.block.height = height;
    result.keepWithNext = keep;
    result.before = before;
    return result;
}

/// How many blocks stand on each page.
std::vector<std::size_t> counts(const std::vector<SetPage>& pages) {
    std::vector<std::size_t> result;
    for (const SetPage& page : pages)
        result.push_back(page.size());
    return result;
}

using Counts = std::vector<std::size_t>;

} // namespace

TEST(PageBreaker, NothingIsOneEmptyPage) {
    EXPECT_EQ(counts(breakPages({}, 10)), (Counts{0}));
}

TEST(PageBreaker, FillsAPageToTheBrim) {
    const std::vector<Slab> slabs{slab(5), slab(5), slab(5)};
    const auto pages = breakPages(slabs, 10);
    EXPECT_EQ(counts(pages), (Counts{2, 1}));
    EXPECT_DOUBLE_EQ(pages[0][1].top, 5);
    EXPECT_DOUBLE_EQ(pages[1][0].top, 0);
}

TEST(PageBreaker, WhiteAboveIsDroppedAtTheHeadOfAPage) {
    const std::vector<Slab> slabs{slab(9), slab(5, false, 3), slab(4, false, 1)};
    const auto pages = breakPages(slabs, 10);
    EXPECT_EQ(counts(pages), (Counts{1, 2}));
    EXPECT_DOUBLE_EQ(pages[1][0].top, 0);
    EXPECT_DOUBLE_EQ(pages[1][1].top, 6);
}

TEST(PageBreaker, KeepsTogetherWhatBelongsTogether) {
    const std::vector<Slab> slabs{slab(4), slab(3, true), slab(3, true), slab(3)};
    EXPECT_EQ(counts(breakPages(slabs, 10)), (Counts{1, 3}));
}

TEST(PageBreaker, BreaksARunThatIsMoreThanAPage) {
    const std::vector<Slab> slabs{slab(4, true), slab(4, true), slab(4, true), slab(4)};
    const auto pages = breakPages(slabs, 10);
    EXPECT_EQ(counts(pages), (Counts{1, 1, 2}));
}

TEST(PageBreaker, ASlabHigherThanAPageHasOneToItself) {
    const std::vector<Slab> slabs{slab(2), slab(15), slab(2)};
    EXPECT_EQ(counts(breakPages(slabs, 10)), (Counts{1, 1, 1}));
}

TEST(PageBreaker, HeadsStandAboveEachPage) {
    std::vector<Slab> slabs{slab(2, true)};
    const auto heads = std::make_shared<SetBlock>(SetBlock{2, {}});
    for (int i = 0; i < 5; ++i) {
        slabs.push_back(slab(3));
        slabs.back().head = heads;
    }
    const auto pages = breakPages(slabs, 10);
    EXPECT_EQ(counts(pages), (Counts{3, 3, 2}));
    EXPECT_EQ(pages[1][0].block, heads.get());
    EXPECT_DOUBLE_EQ(pages[1][1].top, 2);
}

TEST(PageBreaker, SaysAgainAtTheHeadOfAPage) {
    std::vector<Slab> slabs{slab(8), slab(2), slab(2)};
    slabs[2].atTop = std::make_shared<SetBlock>(SetBlock{4, {}});
    const auto pages = breakPages(slabs, 10);
    ASSERT_EQ(counts(pages), (Counts{2, 1}));
    EXPECT_EQ(pages[1][0].block, slabs[2].atTop.get());
}
