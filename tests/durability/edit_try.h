// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "durability/bar.h"
#include "job/workbook.h"
#include "support/book_files.h"
#include "support/fault_disk.h"

#include <optional>

namespace miterbook {

/// What can go wrong with one operation, without the power.
inline constexpr std::array diskFaults{DiskFault::writeFails, DiskFault::writeTears,
    DiskFault::full, DiskFault::syncFails, DiskFault::shortenFails, DiskFault::removeFails,
    DiskFault::removeUnsaid};

/// A book in which one edit of several rows is tried on a bad disk: a house is started.
class EditTry {
public:
    EditTry();

    /// The book as it was, opened on a sound disk. False, with a loss noted, when it cannot be.
    bool begin(Bar& bar);
    Result<void> perform() { return m_workbook->perform(m_edit); }
    /// Memory is as the answer says.
    bool memoryFits(bool done) const { return m_workbook->book() == (done ? m_new : m_old); }
    void close();
    /// Opens the file again, all of it: 'o'ld, 'n'ew, or a sentence.
    std::string found();
    const std::string& path() const { return m_path; }

private:
    BookFolder m_folder;
    std::string m_path = m_folder.book();
    std::string m_bytes;
    Book m_old;
    Book m_new;
    Edit m_edit;
    std::unique_ptr<BookKeeper> m_keeper;
    std::optional<Workbook> m_workbook;
};

} // namespace miterbook
