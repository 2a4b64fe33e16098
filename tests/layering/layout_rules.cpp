// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/layout_rules.h"

#include <algorithm>
#include <string_view>

namespace miterbook {

namespace {

constexpr std::string_view licence = "SPDX-License-Identifier: GPL-3.0-or-later";

bool hasLicence(const SourceFile& file) {
    const std::size_t line = !file.lines.empty() && file.lines[0].starts_with("#!") ? 1 : 0;
    if (line >= file.lines.size())
        return false;
    const std::string_view text = file.lines[line];
    return text == std::string("// ").append(licence) || text == std::string("# ").append(licence)
        || text == std::string("-- ").append(licence);
}

bool isLowerCaseName(const std::string& path) {
    return std::ranges::all_of(path.substr(path.rfind('/') + 1), [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '_' || c == '.';
    });
}

} // namespace

std::vector<Finding> badLayout(const std::vector<SourceFile>& files) {
    std::vector<Finding> findings;
    for (const SourceFile& file : files) {
        const bool header = file.path.ends_with(".h");
        if (file.lines.size() > mostLines)
            findings.push_back(
                {file.path, 0, "has " + std::to_string(file.lines.size()) + " lines, over 500."});
        if (!hasLicence(file))
            findings.push_back({file.path, 1, "does not begin with its licence line."});
        if (header && std::ranges::find(file.lines, "#pragma once") == file.lines.end())
            findings.push_back({file.path, 0, "has no #pragma once."});
        if ((header || file.path.ends_with(".cpp")) && !isLowerCaseName(file.path))
            findings.push_back({file.path, 0, "is not named in lower case with underscores."});
    }
    return findings;
}

} // namespace miterbook
