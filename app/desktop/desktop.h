// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/clock.h"
#include "desktop/safety_desk.h"
#include "papers/paper.h"
#include "store/book_file.h"
#include "windows/app_services.h"

#include <memory>

class QApplication;

namespace miterbook {

class Session;

/// The program on the screen: which book is open, and what its window needs from outside.
class Desktop final : public AppServices {
public:
    Desktop();
    ~Desktop() override;

    QString bookPath() const override;
    QStringList recentBooks() const override;
    Result<void> newBook(const QString& path) override;
    Result<void> openBook(const QString& path) override;
    SafetyServices& safety() override { return m_safety; }
    Result<Edit> readPlanFile(const QString& path) override;
    Result<void> writePlanFile(Id<Plan> plan, const QString& path) override;
    std::vector<PaperChoice> papers() const override;
    Result<void> previewPaper(const QString& name, const JobRef& job, QWidget* parent) override;
    Result<void> writePaper(const QString& name, const JobRef& job, const QString& path) override;

private:
    void goOverTo(std::unique_ptr<Session> session);
    Result<void> openAs(const QString& path, OpenMode mode);
    void reopenBehind(SafetyDesk::Replace replace);
    void closeReplaceOpen(const SafetyDesk::Replace& replace);
    Result<Paper> makePaper(const QString& name, const JobRef& job);

    SystemClock m_clock;
    SafetyDesk m_safety;
    std::unique_ptr<Session> m_session;
};

/// The desktop, on the book named by the first argument, else the one used last, else on the one
/// the user chooses. Returns the exit status.
int runDesktop(QApplication& application);

} // namespace miterbook
