// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/clock.h"
#include "windows/safety_services.h"

#include <functional>

namespace miterbook {

/// What the windows ask for so that the book is not lost, done by the store.
class SafetyDesk final : public SafetyServices {
public:
    /// Something that needs the book closed; it opens it again behind it.
    using Replace = std::function<Result<void>(const std::string& book)>;
    /// Closes the book on the desk, lets it be replaced, and opens it again; later, when the window
    /// that asked is off the call stack.
    using Reopen = std::function<void(Replace)>;

    SafetyDesk(std::function<std::string()> book, Reopen reopen, const Clock& clock)
        : m_book(std::move(book))
        , m_reopen(std::move(reopen))
        , m_clock(clock) {}

    std::vector<BackupLine> backups() const override;
    void restoreBackup(const QString& path) override;
    Result<void> writeSnapshot(const QString& path) override;
    void takeInSnapshot(const QString& path) override;
    Result<QStringList> checkBook() override;

private:
    std::function<std::string()> m_book;
    Reopen m_reopen;
    const Clock& m_clock;
};

/// The backups of any book, as the list shows them.
std::vector<BackupLine> backupLines(const std::string& book);

} // namespace miterbook
