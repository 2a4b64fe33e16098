// SPDX-License-Identifier: GPL-3.0-or-later
#include "review/student_t.h"

#include <gtest/gtest.h>

#include <array>

using namespace miterbook;

TEST(StudentQuantile, IsThatOfTheTables) {
    // [pub] NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2.
    constexpr std::array below{.90, .95, .975, .995};
    constexpr std::array<std::array<double, 4>, 5> table{{{3.0777, 6.3138, 12.7062, 63.6567},
        {1.8856, 2.9200, 4.3027, 9.9248}, {1.6377, 2.3534, 3.1824, 5.8409},
        {1.5332, 2.1318, 2.7764, 4.6041}, {1.4759, 2.0150, 2.5706, 4.0321}}};
    for (std::size_t row = 0; row < table.size(); ++row) {
        for (std::size_t column = 0; column < below.size(); ++column) {
            EXPECT_NEAR(studentQuantile(below[column], static_cast<double>(row + 1)),
                table[row][column], 5e-5);
        }
    }
}
