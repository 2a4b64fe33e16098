// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/opened_book.h"
#include "desk/desk.h"
#include "desktop/rolling_backups.h"
#include "windows/main_window.h"

#include <memory>

namespace miterbook {

/// One open book with its desk and window.
class Session {
public:
    Session(OpenedBook opened, const Clock& clock, AppServices& services);

    Desk& desk() { return m_desk; }
    MainWindow& window() { return *m_window; }
    QString path() const;

private:
    void say(const std::string& sentence);

    std::unique_ptr<BookKeeper> m_keeper; // outlives the desk
    Desk m_desk;
    std::unique_ptr<MainWindow> m_window;
    std::unique_ptr<RollingBackups> m_backups; // none for a book opened for looking only
};

} // namespace miterbook
