// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cmath>
#include <cstdint>
#include <random>

namespace miterbook {

/// Chance that is the same on every machine: std::mt19937 is specified to the bit, the
/// distributions of <random> are not.
class SampleDraw {
public:
    explicit SampleDraw(std::uint32_t seed)
        : m_engine(seed) {}

    /// 0 to below `count`.
    std::int64_t below(std::int64_t count) { return static_cast<std::int64_t>(m_engine()) % count; }
    /// True one time in `times`.
    bool one(std::int64_t times) { return below(times) == 0; }
    /// exp(N(0, spread)), the normal as twelve evens less six.
    double scatter(double spread) {
        double sum = -6;
        for (int i = 0; i < 12; ++i)
            sum += static_cast<double>(m_engine()) / 4294967296.0;
        return std::exp(spread * sum);
    }

private:
    std::mt19937 m_engine;
};

} // namespace miterbook
