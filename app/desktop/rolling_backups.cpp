// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/rolling_backups.h"

#include "store/safety/backups.h"

#include <QMetaObject>

#include <chrono>

namespace miterbook {

namespace {

using namespace std::chrono_literals;

constexpr auto betweenLooks = 30min;

} // namespace

RollingBackups::RollingBackups(std::string book, const Clock& clock, Failed failed)
    : m_book(std::move(book))
    , m_clock(clock)
    , m_failed(std::move(failed)) {
    connect(&m_timer, &QTimer::timeout, this, [this] { begin(BackupReason::daily); });
    m_timer.start(betweenLooks);
    QTimer::singleShot(0, this, [this] { begin(BackupReason::opened); });
}

RollingBackups::~RollingBackups() {
    end();
}

/// Qt's connections belong to the thread that made them, so the work opens the book for itself.
void RollingBackups::begin(BackupReason reason) {
    if (m_busy)
        return;
    end();
    m_goOn = true;
    m_busy = true;
    m_work = std::thread([this, reason] {
        const auto made = backUpIfDue(
            m_book, reason, m_clock, {}, [this] { return m_goOn.load(); });
        m_busy = false;
        if (made || made.error().fault == Fault::cancelled)
            return;
        const std::string sentence = made.error().sentence;
        QMetaObject::invokeMethod(
            this, [this, sentence] { m_failed(sentence); }, Qt::QueuedConnection);
    });
}

void RollingBackups::end() {
    m_goOn = false;
    if (m_work.joinable())
        m_work.join();
}

} // namespace miterbook
