// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/session.h"

#include "desktop/stages.h"
#include "store/safety/book_place.h"

namespace miterbook {

Session::Session(OpenedBook opened, const Clock& clock, AppServices& services)
    : m_keeper(std::move(opened.keeper))
    , m_desk(std::move(opened.workbook), clock)
    , m_window(std::make_unique<MainWindow>(m_desk, services, workingStages())) {
    if (m_keeper->readOnly()) {
        say("This book was opened for looking only: what is changed is not kept.");
        return;
    }
    if (const std::string warning = placeWarning(placeOf(m_keeper->path())); !warning.empty())
        say(warning);
    m_backups = std::make_unique<RollingBackups>(
        m_keeper->path(), clock, [this](const std::string& sentence) { say(sentence); });
}

void Session::say(const std::string& sentence) {
    m_window->sayResult(Error{Fault::storage, sentence});
}

QString Session::path() const {
    return QString::fromStdString(m_keeper->path());
}

} // namespace miterbook
