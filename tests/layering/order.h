// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "layering/source_tree.h"

#include <string_view>

namespace miterbook {

/// The folders of core/ and of ui/ in the order in which they are built: a folder knows only those
/// before it.
struct FolderOrder {
    std::vector<std::string> core;
    std::vector<std::string> ui;
};

/// The words between `opening` and the next `)` in a CMake file, comments left out.
std::vector<std::string> wordsAfter(const SourceFile& cmake, std::string_view opening);

/// Reads MITERBOOK_CORE_ORDER from core/CMakeLists.txt and the folders from ui/CMakeLists.txt; a
/// list is empty when its file is not there.
FolderOrder readOrder(const std::vector<SourceFile>& files);

} // namespace miterbook
