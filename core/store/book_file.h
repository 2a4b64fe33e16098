// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "store/book_keeper.h"
#include "store/schema.h"
#include "store/store_options.h"

#include <memory>
#include <string>

namespace miterbook {

enum class OpenMode {
    write, ///< holds the book; no other program can open it so
    look,  ///< reads only; also from a read-only folder and while another program holds the book
};

/// Makes a new book with the starter's rows and opens it for writing. Errors: Fault::storage when
/// there is a file of that name or the folder cannot be written.
Result<std::unique_ptr<BookKeeper>> createBook(
    const std::string& path, const Book& starter, const StoreOptions& options = {});

/// Opens a book. An older one is copied beside itself, then brought to the present format. Errors:
/// Fault::notFound; Fault::notOurs for what is not a book of ours or a newer one (its bytes stay
/// unchanged); Fault::conflict when another program holds it; Fault::storage when it is damaged or
/// cannot be written.
Result<std::unique_ptr<BookKeeper>> openBook(
    const std::string& path, OpenMode mode, const StoreOptions& options = {});

/// As openBook, with other schema steps than the program's: for tests of later formats.
Result<std::unique_ptr<BookKeeper>> openBookWith(const std::vector<SchemaStep>& steps,
    const std::string& path, OpenMode mode, const StoreOptions& options = {});

} // namespace miterbook
