// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/clock.h"
#include "store/safety/backup_name.h"

#include <QObject>
#include <QTimer>

#include <atomic>
#include <functional>
#include <string>
#include <thread>

namespace miterbook {

/// Makes the backups of an open book in the background: one at once if the book has changed since
/// the latest, and one a day while it stays open. To be made after the book has been opened.
class RollingBackups final : public QObject {
public:
    /// Called with the sentence when a backup could not be made.
    using Failed = std::function<void(const std::string& sentence)>;

    RollingBackups(std::string book, const Clock& clock, Failed failed);
    ~RollingBackups() override;

private:
    void begin(BackupReason reason);
    void end();

    std::string m_book;
    const Clock& m_clock;
    Failed m_failed;
    QTimer m_timer;
    std::atomic<bool> m_goOn = true;
    std::atomic<bool> m_busy = false;
    std::thread m_work;
};

} // namespace miterbook
