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

std::size_t widthOf(std::string_view line) {
    const auto inside = [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) == 0x80U; };
    return line.size() - static_cast<std::size_t>(std::ranges::count_if(line, inside));
}

void findWideLines(const SourceFile& file, std::vector<Finding>& findings) {
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        if (widthOf(file.lines[i]) > widest)
            findings.push_back({file.path, i + 1, "is over 100 characters wide."});
    }
}

} // namespace

std::vector<Finding> badLayout(const std::vector<SourceFile>& files) {
    std::vector<Finding> findings;
    for (const SourceFile& file : files) {
        const bool header = file.path.ends_with(".h");
        const bool code = header || file.path.ends_with(".cpp");
        if (code)
            findWideLines(file, findings);
        if (file.lines.size() > mostLines)
            findings.push_back(
                {file.path, 0, "has " + std::to_string(file.lines.size()) + " lines, over 500."});
        if (!hasLicence(file))
            findings.push_back({file.path, 1, "does not begin with its licence line."});
        if (header && std::ranges::find(file.lines, "#pragma once") == file.lines.end())
            findings.push_back({file.path, 0, "has no #pragma once."});
        if (code && !isLowerCaseName(file.path))
            findings.push_back({file.path, 0, "is not named in lower case with underscores."});
    }
    return findings;
}

} // namespace miterbook
