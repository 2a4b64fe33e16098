// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/includes.h"

#include <optional>

namespace miterbook {

namespace {

namespace fs = std::filesystem;

std::string_view withoutLeadingSpace(std::string_view text) {
    const std::size_t first = text.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string_view() : text.substr(first);
}

/// `#include "a/b.h"`, with spaces wherever the language allows them.
std::optional<Include> directive(std::string_view text) {
    text = withoutLeadingSpace(text);
    if (!text.starts_with('#'))
        return std::nullopt;
    text = withoutLeadingSpace(text.substr(1));
    if (!text.starts_with("include"))
        return std::nullopt;
    text = withoutLeadingSpace(text.substr(7));
    const bool quoted = text.starts_with('"');
    if (!quoted && !text.starts_with('<'))
        return std::nullopt;
    const std::size_t end = text.find(quoted ? '"' : '>', 1);
    if (end == std::string_view::npos)
        return std::nullopt;
    return Include{0, std::string(text.substr(1, end - 1)), quoted};
}

std::string plainPath(const fs::path& path) {
    return path.lexically_normal().generic_string();
}

} // namespace

std::vector<Include> includesOf(const SourceFile& file) {
    std::vector<Include> includes;
    for (std::size_t i = 0; i < file.lines.size(); ++i) {
        if (auto include = directive(file.lines[i])) {
            include->line = i + 1;
            includes.push_back(*include);
        }
    }
    return includes;
}

IncludeResolver::IncludeResolver(const std::vector<SourceFile>& files) {
    for (const SourceFile& file : files) {
        m_paths.insert(file.path);
        m_coreFolders.insert(folderBelow(file.path, "core/"));
    }
    m_coreFolders.erase("");
}

std::string IncludeResolver::resolve(const Include& include, const SourceFile& from) const {
    std::vector<std::string> candidates;
    if (include.quoted)
        candidates.push_back(plainPath(fs::path(from.path).parent_path() / include.path));
    for (const char* base : {"core/", "ui/", "app/", "tests/", ""})
        candidates.push_back(plainPath(base + include.path));
    for (const std::string& each : candidates) {
        if (m_paths.contains(each))
            return each;
    }
    const std::string plain = plainPath(include.path);
    return m_coreFolders.contains(plain.substr(0, plain.find('/'))) ? "core/" + plain : "";
}

} // namespace miterbook
