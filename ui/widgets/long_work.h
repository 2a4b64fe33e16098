// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

#include <atomic>
#include <functional>

class QWidget;

namespace miterbook {

/// Work on another thread: how far it is, and whether it shall stop.
class LongWork {
public:
    bool stopped() const { return m_stopped.load(); }
    void stop() { m_stopped.store(true); }
    void setStep(int done, int total) {
        m_total.store(total);
        m_done.store(done);
    }
    int done() const { return m_done.load(); }
    int total() const { return m_total.load(); }

private:
    std::atomic<bool> m_stopped{false};
    std::atomic<int> m_done{0};
    std::atomic<int> m_total{0}; ///< 0: nobody knows
};

/// Does work on another thread while the window stays alive: after a moment it says what is done
/// and how far it is, and Cancel stops it. The work must not touch what the window changes: give it
/// a copy of the book. False: it was stopped, and what it has made so far is no good.
bool runLong(QWidget* parent, const QString& what, const std::function<void(LongWork&)>& work);

} // namespace miterbook
