// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <memory>
#include <string>

class QTemporaryDir;

namespace miterbook {

/// A copy of a book's bytes, with the journal of an unfinished change if one is there, to be opened
/// and written without touching the book. Goes when it does.
class WorkingCopy {
public:
    /// In a new folder beside `near`, where there is to be room for it.
    static Result<WorkingCopy> of(const std::string& book, const std::string& near);
    WorkingCopy(WorkingCopy&&) noexcept;
    WorkingCopy& operator=(WorkingCopy&&) noexcept;
    ~WorkingCopy();

    const std::string& path() const { return m_path; }

private:
    WorkingCopy(std::unique_ptr<QTemporaryDir> folder, std::string path);

    std::unique_ptr<QTemporaryDir> m_folder;
    std::string m_path;
};

} // namespace miterbook
