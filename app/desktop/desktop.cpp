// SPDX-License-Identifier: GPL-3.0-or-later
#include "desktop/desktop.h"

#include "desktop/recent_books.h"
#include "desktop/session.h"
#include "desktop/ways_out.h"
#include "figures/job_paper.h"
#include "io/file_bytes.h"
#include "io/plan_text.h"
#include "papers/paper_list.h"
#include "printing/export_paper.h"
#include "printing/preview.h"

#include <QApplication>

namespace miterbook {

Desktop::Desktop()
    : m_safety([this] { return m_session->path().toStdString(); },
        [this](SafetyDesk::Replace replace) { reopenBehind(std::move(replace)); }, m_clock) {
}

Desktop::~Desktop() = default;

QString Desktop::bookPath() const {
    return m_session ? m_session->path() : QString();
}

QStringList Desktop::recentBooks() const {
    return miterbook::recentBooks();
}

/// The window that asked is still on the call stack, so its session ends a moment later.
void Desktop::goOverTo(std::unique_ptr<Session> session) {
    const std::shared_ptr<Session> old(std::move(m_session));
    m_session = std::move(session);
    rememberBook(m_session->path());
    m_session->window().show();
    if (!old)
        return;
    old->window().hide();
    QMetaObject::invokeMethod(
        qApp, [old] {}, Qt::QueuedConnection);
}

Result<void> Desktop::newBook(const QString& path) {
    auto opened = createWorkbook(path.toStdString());
    if (!opened)
        return opened.error();
    goOverTo(std::make_unique<Session>(std::move(*opened), m_clock, *this));
    return {};
}

Result<void> Desktop::openAs(const QString& path, OpenMode mode) {
    auto opened = openWorkbook(path.toStdString(), mode);
    if (!opened)
        return opened.error();
    goOverTo(std::make_unique<Session>(std::move(*opened), m_clock, *this));
    return {};
}

/// A book that cannot be opened is not the end: what can be done about it is offered at once.
Result<void> Desktop::openBook(const QString& path) {
    auto opened = openAs(path, OpenMode::write);
    if (opened)
        return opened;
    QWidget* window = m_session ? &m_session->window() : nullptr;
    const WayTaken taken = offerWaysOut(window, path, opened.error(), m_clock);
    if (taken.way == WayOut::none)
        return opened;
    return openAs(taken.book, taken.way == WayOut::look ? OpenMode::look : OpenMode::write);
}

/// The window that asked is still on the call stack, so its session ends a moment later.
void Desktop::reopenBehind(SafetyDesk::Replace replace) {
    QMetaObject::invokeMethod(
        qApp, [this, replace = std::move(replace)] { closeReplaceOpen(replace); },
        Qt::QueuedConnection);
}

void Desktop::closeReplaceOpen(const SafetyDesk::Replace& replace) {
    const QString path = m_session->path();
    const bool quits = QGuiApplication::quitOnLastWindowClosed();
    QGuiApplication::setQuitOnLastWindowClosed(false); // there is none for a moment
    m_session.reset();
    const auto replaced = replace(path.toStdString());
    const auto opened = openBook(path);
    QGuiApplication::setQuitOnLastWindowClosed(quits);
    if (!m_session)
        qApp->quit();
    else
        m_session->window().sayResult(replaced ? opened : replaced);
}

Result<Edit> Desktop::readPlanFile(const QString& path) {
    const auto bytes = readFileBytes(path.toStdString());
    if (!bytes)
        return bytes.error();
    Desk& desk = m_session->desk();
    auto edit = readPlanText(desk.book(), desk.ids(), *bytes);
    if (!edit)
        return badInput(fileName(path.toStdString()) + ": " + edit.error().sentence);
    return edit;
}

Result<void> Desktop::writePlanFile(Id<Plan> plan, const QString& path) {
    if (!m_session->desk().openPlan(plan))
        return Error{Fault::notFound, "That plan cannot be opened."};
    return writeWholeFile(
        path, QByteArray::fromStdString(writePlanText(m_session->desk().book(), plan)));
}

std::vector<PaperChoice> Desktop::papers() const {
    std::vector<PaperChoice> choices;
    for (const PaperKind& kind : paperKinds)
        choices.push_back(
            {QString::fromLatin1(kind.name.data()), QString::fromLatin1(kind.title.data())});
    return choices;
}

Result<Paper> Desktop::makePaper(const QString& name, const JobRef& job) {
    return jobPaper(m_session->desk(), m_session->window().figures(), name.toStdString(), job);
}

Result<void> Desktop::previewPaper(const QString& name, const JobRef& job, QWidget* parent) {
    const auto paper = makePaper(name, job);
    if (!paper)
        return paper.error();
    miterbook::previewPaper(parent, *paper, m_session->desk().book().prices.shop().page);
    return {};
}

Result<void> Desktop::writePaper(const QString& name, const JobRef& job, const QString& path) {
    const auto paper = makePaper(name, job);
    if (!paper)
        return paper.error();
    return exportPaper(*paper, m_session->desk().book().prices.shop().page, path);
}

} // namespace miterbook
