// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/main_window.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "widgets/data_table.h"
#include "widgets/message_strip.h"
#include "widgets/page_stack.h"
#include "windows/app_services.h"
#include "windows/book_actions.h"
#include "windows/book_page.h"
#include "windows/help.h"
#include "windows/houses_page.h"
#include "windows/job_page.h"
#include "windows/nav_bar.h"
#include "windows/office_page.h"
#include "windows/plans_page.h"
#include "windows/status_line.h"

#include <QAction>
#include <QApplication>
#include <QFileInfo>
#include <QKeyEvent>
#include <QMenuBar>
#include <QSettings>
#include <QStatusBar>
#include <QVBoxLayout>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

const QString geometryKey = u"window/geometry"_s;

} // namespace

MainWindow::MainWindow(Desk& desk, AppServices& services, const std::vector<StageFactory>& stages)
    : m_desk(desk)
    , m_services(services)
    , m_figures(desk)
    , m_money(desk)
    , m_files(new BookActions(desk, services, *this)) {
    makePages(stages);
    connectPages();
    makeMenus();
    resize(fontMetrics().averageCharWidth() * 180, fontMetrics().height() * 45);
    restoreGeometry(QSettings().value(geometryKey).toByteArray());
    showPlace(houses);
}

MainWindow::~MainWindow() {
    QSettings().setValue(geometryKey, saveGeometry());
}

void MainWindow::makePages(const std::vector<StageFactory>& stages) {
    m_nav = new NavBar(tr("Places"));
    m_nav->add(tr("Houses"), tr("Every house by stage (Alt+Home)"));
    m_nav->add(tr("Plans"), tr("Builders' plans (Alt+2)"));
    m_nav->add(
        tr("The book"), tr("Profiles and prices, labour rates, crew, builders, terms (Alt+3)"));
    m_nav->add(tr("Office"), tr("Who owes, what to bill, reminders, dates (Alt+4)"));
    m_nav->add({}, tr("The plan or house you are working on (Alt+5)"));
    m_nav->setShown(job, false);

    m_places = new PageStack;
    m_houses = new HousesPage(m_desk, m_money);
    m_plans = new PlansPage(m_desk, *m_files);
    m_job = new JobPage(m_desk, m_figures);
    m_places->addWidget(m_houses);
    m_places->addWidget(m_plans);
    m_places->addWidget(new BookPage(m_desk));
    m_office = new OfficePage(m_desk, m_money);
    m_places->addWidget(m_office);
    m_places->addWidget(m_job);
    for (const StageFactory& make : stages)
        m_job->addStage(make(m_desk, m_figures));
    m_strip = new MessageStrip;

    auto* whole = new QWidget;
    auto* layout = new QVBoxLayout(whole);
    layout->addWidget(m_nav, 0, Qt::AlignLeft);
    layout->addWidget(m_places, 1);
    layout->addWidget(m_strip);
    setCentralWidget(whole);
    statusBar()->addWidget(new StatusLine(m_desk, m_figures), 1);
}

void MainWindow::connectPages() {
    connect(m_nav, &NavBar::chosen, this, [this](int place) { showPlace(Place(place)); });
    connect(m_houses, &HousesPage::opened, this, &MainWindow::showJob);
    connect(m_office, &OfficePage::opened, this, &MainWindow::showJob);
    connect(m_plans, &PlansPage::opened, this, &MainWindow::showJob);
    connect(m_plans, &PlansPage::startWanted, m_houses, &HousesPage::startHouse);
    connect(&m_desk, &Desk::refused, m_strip, &MessageStrip::say);
    connect(&m_desk, &Desk::changed, m_strip, &MessageStrip::dismiss);
    connect(&m_desk, &Desk::changed, this, &MainWindow::leaveLostJob);
    connect(&m_desk, &Desk::changed, this, &MainWindow::showTitle);
}

bool MainWindow::showJob(const JobRef& wanted) {
    if (!m_desk.openPlan(wanted.plan))
        return false;
    m_figures.setJob(wanted);
    m_job->showJob();
    m_nav->setShown(job, true);
    showPlace(job);
    return true;
}

void MainWindow::showPlace(Place place) {
    if (place == job && !m_figures.job())
        return;
    m_places->setCurrentIndex(place);
    m_nav->setCurrent(place);
    showTitle();
    m_places->currentWidget()->setFocus();
}

MainWindow::Place MainWindow::place() const {
    return Place(m_places->currentIndex());
}

/// A plan or house that has been removed, or whose making was undone, is not shown any more.
void MainWindow::leaveLostJob() {
    if (!m_figures.job() || m_desk.book().plan(m_figures.job().plan))
        return;
    m_figures.setJob({});
    m_nav->setShown(job, false);
    if (place() == job)
        showPlace(houses);
}

void MainWindow::showTitle() {
    const QString where = m_figures.job() ? m_job->title() : QString();
    m_nav->setWord(job, where);
    const QString file = QFileInfo(m_services.bookPath()).completeBaseName();
    QString title = file.isEmpty() ? u"Miterbook"_s : file + u" \u2013 Miterbook"_s;
    if (place() == job && !where.isEmpty())
        title.prepend(where + u" \u2013 "_s);
    setWindowTitle(title);
}

void MainWindow::sayResult(const Result<void>& done) {
    if (!done)
        m_strip->say(text(done.error().sentence));
}

void MainWindow::makeMenus() {
    QMenu* file = menuBar()->addMenu(tr("&Book"));
    m_files->fill(*file);
    QMenu* edit = menuBar()->addMenu(tr("&Edit"));
    QAction* undo = m_desk.undoStack().createUndoAction(this, tr("Undo:"));
    undo->setShortcuts(QKeySequence::Undo);
    QAction* redo = m_desk.undoStack().createRedoAction(this, tr("Redo:"));
    redo->setShortcuts(QKeySequence::Redo);
    edit->addAction(undo);
    edit->addAction(redo);
    const auto filled = [this](const QString& title, void (MainWindow::*fill)(QMenu&)) {
        QMenu* menu = menuBar()->addMenu(title);
        connect(menu, &QMenu::aboutToShow, this, [this, menu, fill] {
            menu->clear();
            (this->*fill)(*menu);
            if (menu->isEmpty())
                menu->addAction(tr("Nothing to do here"))->setEnabled(false);
        });
    };
    filled(tr("&Rows"), &MainWindow::fillRowsMenu);
    filled(tr("P&age"), &MainWindow::fillPageMenu);
    filled(tr("&Papers"), &MainWindow::fillPapersMenu);
    makeGoMenu();
    fillHelpMenu(*menuBar()->addMenu(tr("&Help")), *this);
}

void MainWindow::makeGoMenu() {
    QMenu* go = menuBar()->addMenu(tr("&Go"));
    const auto add = [&](const QString& words, const QKeySequence& keys, Place place) {
        connect(go->addAction(words, keys), &QAction::triggered, this,
            [this, place] { showPlace(place); });
    };
    add(tr("&Houses"), QKeySequence(Qt::ALT | Qt::Key_Home), houses);
    add(tr("&Plans"), QKeySequence(Qt::ALT | Qt::Key_2), plans);
    add(tr("The &book"), QKeySequence(Qt::ALT | Qt::Key_3), book);
    add(tr("O&ffice"), QKeySequence(Qt::ALT | Qt::Key_4), office);
    add(tr("The &open plan or house"), QKeySequence(Qt::ALT | Qt::Key_5), job);
    go->addSeparator();
    for (int stage = 0; stage < m_job->stageCount(); ++stage) {
        QAction* action = go->addAction(
            m_job->stageTitle(stage), QKeySequence(Qt::CTRL | Qt::Key(Qt::Key_1 + stage)));
        connect(action, &QAction::triggered, this, [this, stage] {
            showPlace(job);
            m_job->showStage(stage);
        });
    }
}

void MainWindow::fillRowsMenu(QMenu& menu) {
    if (auto* table = qobject_cast<DataTable*>(QApplication::focusWidget()))
        menu.addActions(table->gestures());
}

void MainWindow::fillPageMenu(QMenu& menu) {
    if (place() == houses)
        menu.addActions(m_houses->actions());
    else if (place() == plans)
        menu.addActions(m_plans->actions());
    else if (place() == job)
        menu.addActions(m_job->stageActions());
}

void MainWindow::fillPapersMenu(QMenu& menu) {
    const JobRef shown = m_figures.job();
    if (!shown || place() != job)
        return;
    for (const PaperChoice& paper : m_services.papers()) {
        QAction* action = menu.addAction(tr("%1\u2026").arg(paper.title));
        connect(action, &QAction::triggered, this, [this, name = paper.name, shown] {
            sayResult(m_services.previewPaper(name, shown, this));
        });
    }
}

/// Only now is it said which book the window is of: while it is made, the last one is open still.
void MainWindow::showEvent(QShowEvent* event) {
    showTitle();
    QMainWindow::showEvent(event);
}

void MainWindow::keyPressEvent(QKeyEvent* event) {
    if (event->key() == Qt::Key_Escape && place() != houses)
        showPlace(houses);
    else
        QMainWindow::keyPressEvent(event);
}

} // namespace miterbook
