// SPDX-License-Identifier: GPL-3.0-or-later
// One fuzzer: built by clang, once for each target.
#include "fuzz/targets.h"

#include <cstddef>
#include <cstdint>

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
    miterbook::fuzz::MITERBOOK_FUZZ_TARGET(
        std::string_view(reinterpret_cast<const char*>(data), size));
    return 0;
}
