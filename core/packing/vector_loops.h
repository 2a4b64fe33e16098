// SPDX-License-Identifier: GPL-3.0-or-later
// The few inner loops that all time goes into, compiled for wider vectors where the processor
// has them.
#pragma once

#include <cstddef>
#include <cstdint>

namespace miterbook::packing {

// to[w] = max(from[w], from[w - width] + value) for w >= width, else from[w]. No overlap.
void addCopies(std::int32_t* to, const std::int32_t* from, std::int64_t size, std::int64_t width,
    std::int32_t value);
void addCopies(std::int64_t* to, const std::int64_t* from, std::int64_t size, std::int64_t width,
    std::int64_t value);

// to[i] += factor * from[i]. No overlap.
void addScaled(double* to, const double* from, std::size_t size, double factor);

} // namespace miterbook::packing
