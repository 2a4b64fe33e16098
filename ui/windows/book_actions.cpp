// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/book_actions.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "windows/app_services.h"
#include "windows/main_window.h"
#include "windows/safety_actions.h"

#include <QAction>
#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

const QString bookEnding = u".miterbook"_s;
const QString planEnding = u".miterplan"_s;

QString withEnding(const QString& path, const QString& ending) {
    return path.endsWith(ending, Qt::CaseInsensitive) ? path : path + ending;
}

} // namespace

BookActions::BookActions(Desk& desk, AppServices& services, MainWindow& window)
    : QObject(&window)
    , m_desk(desk)
    , m_services(services)
    , m_window(window)
    , m_safety(new SafetyActions(services, window))
    , m_bring(new QAction(tr("&Bring in plan files\u2026"), this)) {
    m_bring->setShortcut(QKeySequence(Qt::CTRL | Qt::Key_B));
    connect(m_bring, &QAction::triggered, this, &BookActions::bringPlanFiles);
}

void BookActions::fill(QMenu& menu) {
    const auto add = [&](const QString& words, const QKeySequence& keys, auto slot) {
        connect(menu.addAction(words, keys), &QAction::triggered, this, slot);
    };
    add(tr("&New book\u2026"), QKeySequence::New, &BookActions::newBook);
    add(tr("&Open book\u2026"), QKeySequence::Open, &BookActions::openBook);
    QMenu* recent = menu.addMenu(tr("Open &lately used"));
    connect(recent, &QMenu::aboutToShow, this, [this, recent] { fillRecent(*recent); });
    menu.addSeparator();
    menu.addAction(m_bring);
    menu.addSeparator();
    m_safety->fill(menu);
    menu.addSeparator();
    QAction* quit = menu.addAction(tr("&Quit"), QKeySequence::Quit);
    connect(quit, &QAction::triggered, &m_window, &QWidget::close);
}

void BookActions::newBook() {
    const QString path = QFileDialog::getSaveFileName(
        &m_window, tr("New book"), QDir::homePath(), tr("Miterbook (*%1)").arg(bookEnding));
    if (!path.isEmpty())
        m_window.sayResult(m_services.newBook(withEnding(path, bookEnding)));
}

void BookActions::openBook() {
    const QString path = QFileDialog::getOpenFileName(&m_window, tr("Open book"),
        QFileInfo(m_services.bookPath()).path(), tr("Miterbook (*%1)").arg(bookEnding));
    if (!path.isEmpty())
        m_window.sayResult(m_services.openBook(path));
}

void BookActions::fillRecent(QMenu& menu) {
    menu.clear();
    for (const QString& path : m_services.recentBooks()) {
        QAction* action = menu.addAction(menuText(path));
        connect(action, &QAction::triggered, this,
            [this, path] { m_window.sayResult(m_services.openBook(path)); });
    }
    if (menu.isEmpty())
        menu.addAction(tr("None yet"))->setEnabled(false);
}

void BookActions::bringPlanFiles() {
    const QStringList paths = QFileDialog::getOpenFileNames(&m_window, tr("Bring in plan files"),
        QDir::homePath(), tr("Plans (*%1);;All files (*)").arg(planEnding));
    for (const QString& path : paths) {
        const auto edit = m_services.readPlanFile(path);
        if (!edit) {
            m_desk.refuse(edit.error());
            return;
        }
        if (!m_desk.perform(*edit))
            return;
    }
    if (!paths.isEmpty())
        m_window.showPlace(MainWindow::plans);
}

void BookActions::writePlan(Id<Plan> id) {
    const Plan* plan = m_desk.book().plan(id);
    if (!plan || !m_desk.openPlan(id))
        return;
    const QString path = QFileDialog::getSaveFileName(&m_window, tr("Write plan file"),
        QDir::home().filePath(text(plan->name) + planEnding), tr("Plans (*%1)").arg(planEnding));
    if (!path.isEmpty())
        m_window.sayResult(m_services.writePlanFile(id, withEnding(path, planEnding)));
}

} // namespace miterbook
