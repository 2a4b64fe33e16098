// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace miterbook::packing {

/// The folder of the jobs that the tests cut, with a slash behind it.
inline std::string jobData() {
    return MITERBOOK_TEST_DIR "/data/";
}

} // namespace miterbook::packing
