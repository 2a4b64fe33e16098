// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <memory>
#include <string>

class QLockFile;

namespace miterbook {

/// Holds a book for one program at a time by a small file beside it (BOOK.lock) that says who has
/// it. A lock whose program is gone from this machine is taken over.
class BookLock {
public:
    /// Errors: Fault::conflict naming who holds the book; Fault::storage where the folder is
    /// read-only.
    static Result<std::unique_ptr<BookLock>> take(const std::string& path);
    ~BookLock();

private:
    explicit BookLock(std::unique_ptr<QLockFile> file);

    std::unique_ptr<QLockFile> m_file;
};

} // namespace miterbook
