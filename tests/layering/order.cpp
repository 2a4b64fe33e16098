// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/order.h"

#include <algorithm>
#include <sstream>

namespace miterbook {

namespace {

std::string withoutComments(const SourceFile& cmake) {
    std::string text;
    for (const std::string& line : cmake.lines)
        text += line.substr(0, line.find('#')) + '\n';
    return text;
}

std::vector<std::string> wordsOf(
    const std::vector<SourceFile>& files, std::string_view path, std::string_view opening) {
    const auto found = std::ranges::find(files, path, &SourceFile::path);
    return found == files.end() ? std::vector<std::string>() : wordsAfter(*found, opening);
}

} // namespace

std::vector<std::string> wordsAfter(const SourceFile& cmake, std::string_view opening) {
    const std::string text = withoutComments(cmake);
    const std::size_t at = text.find(opening);
    if (at == std::string::npos)
        return {};
    const std::size_t first = at + opening.size();
    std::istringstream in(text.substr(first, text.find(')', first) - first));
    std::vector<std::string> words;
    for (std::string word; in >> word;)
        words.push_back(word);
    return words;
}

FolderOrder readOrder(const std::vector<SourceFile>& files) {
    return {wordsOf(files, "core/CMakeLists.txt", "set(MITERBOOK_CORE_ORDER"),
        wordsOf(files, "ui/CMakeLists.txt", "foreach(folder")};
}

} // namespace miterbook
