// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/opened_book.h"
#include "ui/ui_kit.h"
#include "windows/main_window.h"

#include <QTemporaryDir>

#include <functional>

namespace miterbook {

/// The sample book, with a year of houses, in a window with all stages.
class SampleWindow {
public:
    /// `prepare` may change the shop before plans are brought in.
    explicit SampleWindow(const std::function<void(Shop&)>& prepare = {});
    ~SampleWindow();

    MainWindow& window() { return *m_window; }
    Desk& desk() { return *m_desk; }
    /// A house that is being worked on, which has something on every page.
    JobRef underway() const;
    JobRef firstPlan() const;

private:
    QTemporaryDir m_folder;
    FixedClock m_clock;
    NoServices m_services;
    std::unique_ptr<Keeper> m_keeper;
    std::unique_ptr<Desk> m_desk;
    std::unique_ptr<MainWindow> m_window;
};

} // namespace miterbook
