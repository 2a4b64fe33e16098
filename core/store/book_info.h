// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "store/connection.h"

#include <cstdint>
#include <string>

namespace miterbook {

/// What the book says of itself.
struct BookInfo {
    int format = 0;
    std::string created; ///< UTC, ISO 8601
    std::int64_t lastId = 0;
};

Result<BookInfo> readBookInfo(Connection& connection);
/// Writes the one row of a new book.
Result<void> insertBookInfo(Connection& connection, const BookInfo& info);
Result<void> writeFormat(Connection& connection, int format);
/// Remembers that ids up to `id` have been given; never goes down.
Result<void> raiseLastId(Connection& connection, std::int64_t id);

} // namespace miterbook
