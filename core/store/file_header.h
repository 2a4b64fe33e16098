// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <cstdint>
#include <string>

namespace miterbook {

/// Marks a file as a book of ours in SQLite's application_id: the letters "MBok".
inline constexpr std::int32_t bookFileMark = 0x4D426F6B;

/// Sees from the first bytes, without SQLite and without writing, whether a file can be a book of
/// format `newest` or older. Errors: Fault::notFound when there is none, Fault::notOurs for an
/// empty file, another kind of file, another program's database or a newer book, Fault::storage
/// when it cannot be read. Value: its format.
Result<int> readFileHeader(const std::string& path, int newest);

/// The file's name without its folder, between quotes, for sentences.
std::string shownName(const std::string& path);

} // namespace miterbook
