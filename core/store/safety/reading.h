// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/connection.h"

#include <memory>
#include <string>

namespace miterbook {

/// A book of this or an older format, opened for reading and seen to be one of ours.
struct BookReading {
    int format = 0;
    std::unique_ptr<Connection> connection;
};

/// Opens a book as `openBook` does for looking, older formats too. Errors: as openBook.
Result<BookReading> openForReading(const std::string& path);

/// What a book holds, said shortly so that one backup can be told from another.
struct BookSummary {
    int format = 0;
    std::string created; ///< UTC, ISO 8601
    std::int64_t houses = 0;
    std::int64_t plans = 0; ///< builders' plans, without the houses' own
    std::int64_t edits = 0; ///< the number of the last one
    std::string lastAt;     ///< UTC, ISO 8601
    std::string lastSentence;

    bool operator==(const BookSummary&) const = default;
};

Result<BookSummary> summaryOf(const BookReading& book);
/// Of a file.
Result<BookSummary> readSummary(const std::string& path);

} // namespace miterbook
