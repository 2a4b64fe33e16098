// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <filesystem>
#include <string>
#include <vector>

namespace miterbook {

/// A text file of the project.
struct SourceFile {
    std::string path; ///< from the root, with slashes: "core/plan/room.h"
    std::vector<std::string> lines;
};

/// Something that a rule of the house forbids; line 0 means the whole file.
struct Finding {
    std::string file;
    std::size_t line = 0;
    std::string sentence;

    bool operator==(const Finding&) const = default;
};

std::string inWords(const std::vector<Finding>& findings);

/// The sources, scripts and build files below app/, core/, resources/, tests/ and ui/ of `root`, by
/// path. Approved papers and other data are left out.
std::vector<SourceFile> readTree(const std::filesystem::path& root);

/// The first folder of a path below the prefix: folderBelow("core/plan/room.h", "core/") is "plan";
/// empty when the path is not below it or is a file right there.
std::string folderBelow(const std::string& path, const std::string& prefix);

} // namespace miterbook
