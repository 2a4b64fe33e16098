// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/store_options.h"

namespace miterbook {

const Clock& clockOf(const StoreOptions& options) {
    static const SystemClock machine;
    return options.clock ? *options.clock : machine;
}

} // namespace miterbook
