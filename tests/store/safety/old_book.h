// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/book.h"

#include <string>

namespace miterbook {

/// Writes the small book as a program of an older format has left it: its tables, the columns there
/// were, and a journal that knows of no others.
void writeOldBook(const std::string& path, int format);
/// The same of any book that has nothing which that format did not know.
void writeOldBook(const std::string& path, int format, const Book& book);

} // namespace miterbook
