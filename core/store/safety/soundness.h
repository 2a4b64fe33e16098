// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/safety/reading.h"

#include <string>
#include <vector>

namespace miterbook {

/// What is wrong with the pages and references of a book, at most `most` sentences.
Result<std::vector<std::string>> damageOf(Connection& connection, int most);

/// Issued papers whose text is not what its SHA-256 says: "Invoice 12 is not what was issued."
/// Also those that cannot be read. Value: the sentences; none when all are as they were issued.
Result<std::vector<std::string>> changedPapers(const BookReading& book);

/// Reads every page, every reference and every issued paper of a file that nobody writes. Errors:
/// the first thing that is wrong.
Result<void> checkSoundness(const std::string& path);

} // namespace miterbook
