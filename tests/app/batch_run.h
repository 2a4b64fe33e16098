// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>
#include <vector>

namespace miterbook {

/// What a batch command printed and how it ended.
struct BatchRun {
    int status = 0;
    std::string out;
    std::string err;
};

/// Runs "miterbook WORDS..." in this process.
BatchRun runBatch(const std::vector<std::string>& words);

/// A file of sample-jobs.
std::string sampleFile(const std::string& path);

} // namespace miterbook
