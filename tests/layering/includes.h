// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layering/source_tree.h"

#include <set>

namespace miterbook {

/// One include directive, as written.
struct Include {
    std::size_t line = 0; ///< from 1
    std::string path;
    bool quoted = false; ///< "path", else <path>

    bool operator==(const Include&) const = default;
};

/// The include directives of a file, in quotes or angle brackets; a commented one does not count.
std::vector<Include> includesOf(const SourceFile& file);

/// Knows which file of the project an include means.
class IncludeResolver {
public:
    explicit IncludeResolver(const std::vector<SourceFile>& files);

    /// The path from the root, found as the compiler finds it: beside the file (quotes only), then
    /// below core/, ui/, app/, tests/ and the root. Empty for a header from elsewhere. A file that
    /// is not there counts as one of core/ when its first folder is a folder of core/.
    std::string resolve(const Include& include, const SourceFile& from) const;

private:
    std::set<std::string> m_paths;
    std::set<std::string> m_coreFolders;
};

} // namespace miterbook
