// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/session.h"

#include "desktop/stages.h"

namespace miterbook {

Session::Session(OpenedBook opened, const Clock& clock, AppServices& services)
    : m_keeper(std::move(opened.keeper))
    , m_desk(std::move(opened.workbook), clock)
    , m_window(std::make_unique<MainWindow>(m_desk, services, workingStages())) {}

QString Session::path() const {
    return QString::fromStdString(m_keeper->path());
}

} // namespace miterbook
