// SPDX-License-Identifier: GPL-3.0-or-later
#include "packing/vector_loops.h"

#include <algorithm>

// One copy per instruction set, chosen when the program is loaded. Sanitizers instrument code
// that runs before they are ready, so their builds keep the plain copy.
#if defined(__x86_64__) && defined(__GNUC__) && !defined(__clang__)                                \
    && !defined(__SANITIZE_ADDRESS__) && !defined(__SANITIZE_THREAD__)
#define MITERBOOK_VECTOR_CLONES __attribute__((target_clones("avx2", "default")))
#else
#define MITERBOOK_VECTOR_CLONES
#endif

namespace miterbook::packing {

MITERBOOK_VECTOR_CLONES
void addCopies(std::int32_t* __restrict to, const std::int32_t* __restrict from, std::int64_t size,
    std::int64_t width, std::int32_t value) {
    const std::int64_t below = std::min(width, size);
    std::copy(from, from + below, to);
    for (std::int64_t w = width; w < size; ++w) {
        const std::int32_t with = from[w - width] + value;
        to[w] = from[w] > with ? from[w] : with;
    }
}

MITERBOOK_VECTOR_CLONES
void addCopies(std::int64_t* __restrict to, const std::int64_t* __restrict from, std::int64_t size,
    std::int64_t width, std::int64_t value) {
    const std::int64_t below = std::min(width, size);
    std::copy(from, from + below, to);
    for (std::int64_t w = width; w < size; ++w) {
        const std::int64_t with = from[w - width] + value;
        to[w] = from[w] > with ? from[w] : with;
    }
}

MITERBOOK_VECTOR_CLONES
void addScaled(
    double* __restrict to, const double* __restrict from, std::size_t size, double factor) {
    for (std::size_t i = 0; i < size; ++i)
        to[i] += factor * from[i];
}

} // namespace miterbook::packing
