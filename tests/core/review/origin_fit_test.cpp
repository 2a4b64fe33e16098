// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/origin_fit.h"

#include <gtest/gtest.h>

using namespace miterbook;

TEST(OriginFit, CertifiedNoInt1) {
    // [pub] NIST StRD, linear regression, NoInt1: certified values.
    std::vector<double> x;
    std::vector<double> y;
    for (int i = 0; i <= 10; ++i) {
        x.push_back(60 + i);
        y.push_back(130 + i);
    }
    const auto fit = fitThroughOrigin(x, y);
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->slope, 2.07438016528926, 1e-13);
    EXPECT_NEAR(fit->error, .0165289256198347, 1e-14);
    EXPECT_NEAR(fit->residual, 3.56753034006338, 1e-12);
    EXPECT_EQ(fit->freedom, 10);
}

TEST(OriginFit, CertifiedNoInt2) {
    // [pub] NIST StRD, linear regression, NoInt2: certified values.
    const auto fit = fitThroughOrigin({4, 5, 6}, {3, 4, 4});
    ASSERT_TRUE(fit);
    EXPECT_NEAR(fit->slope, .727272727272727, 1e-14);
    EXPECT_NEAR(fit->error, .0420827318078432, 1e-14);
}

TEST(OriginFit, OfOnePointIsItsRatio) {
    const auto fit = fitThroughOrigin({8}, {12});
    ASSERT_TRUE(fit);
    EXPECT_DOUBLE_EQ(fit->slope, 1.5);
    EXPECT_EQ(fit->freedom, 0);
    EXPECT_EQ(fit->error, 0);
}

TEST(OriginFit, NeedsAQuantity) {
    EXPECT_EQ(
        fitThroughOrigin({}, {}).error().sentence, "There is no quantity to learn a rate from.");
    EXPECT_FALSE(fitThroughOrigin({0, 0}, {1, 2}));
}
