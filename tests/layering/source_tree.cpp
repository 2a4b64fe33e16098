// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/source_tree.h"

#include <algorithm>
#include <array>
#include <fstream>

namespace miterbook {

namespace {

namespace fs = std::filesystem;

bool isSource(const fs::path& path) {
    static constexpr std::array endings{".h", ".cpp", ".in", ".sql", ".cmake"};
    static constexpr std::array names{"CMakeLists.txt", "run", "install"};
    return std::ranges::find(endings, path.extension()) != endings.end()
        || std::ranges::find(names, path.filename()) != names.end();
}

std::vector<std::string> linesOf(const fs::path& path) {
    std::ifstream in(path);
    std::vector<std::string> lines;
    for (std::string line; std::getline(in, line);)
        lines.push_back(line);
    return lines;
}

} // namespace

std::string inWords(const std::vector<Finding>& findings) {
    std::string text;
    for (const Finding& each : findings) {
        text += each.file + (each.line == 0 ? "" : ':' + std::to_string(each.line)) + ": "
            + each.sentence + '\n';
    }
    return text;
}

std::vector<SourceFile> readTree(const fs::path& root) {
    std::vector<SourceFile> files;
    for (const char* top : {"app", "core", "resources", "tests", "ui"}) {
        if (!fs::exists(root / top))
            continue;
        for (const auto& entry : fs::recursive_directory_iterator(root / top)) {
            if (entry.is_regular_file() && isSource(entry.path()))
                files.push_back({entry.path().lexically_relative(root).generic_string(),
                    linesOf(entry.path())});
        }
    }
    std::ranges::sort(files, {}, &SourceFile::path);
    return files;
}

std::string folderBelow(const std::string& path, const std::string& prefix) {
    if (!path.starts_with(prefix))
        return {};
    const std::size_t slash = path.find('/', prefix.size());
    return slash == std::string::npos ? std::string()
                                      : path.substr(prefix.size(), slash - prefix.size());
}

} // namespace miterbook
