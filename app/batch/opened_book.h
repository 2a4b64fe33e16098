// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/workbook.h"
#include "store/book_file.h"

#include <memory>
#include <string>

namespace miterbook {

/// A book file and its value, opened together.
struct OpenedBook {
    std::unique_ptr<BookKeeper> keeper;
    Workbook workbook;

    const Book& book() const { return workbook.book(); }
    Result<void> perform(const Edit& edit) { return workbook.perform(edit); }
};

/// Opens a book; the errors are openBook's.
Result<OpenedBook> openWorkbook(const std::string& path, OpenMode mode);

/// Makes a new book with the starter values and opens it.
Result<OpenedBook> createWorkbook(const std::string& path);

} // namespace miterbook
