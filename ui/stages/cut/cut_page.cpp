// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/cut_page.h"

#include "cut/progress.h"
#include "desk/text.h"
#include "stages/cut/assembly_tab.h"
#include "stages/cut/bench_tab.h"
#include "stages/cut/cut_desk.h"
#include "stages/cut/measures_tab.h"
#include "stages/cut/saw_check_tab.h"
#include "stages/cut/sheet_tab.h"
#include "stages/cut/sticks_tab.h"
#include "widgets/empty_page.h"
#include "widgets/page_stack.h"
#include "widgets/plain_text.h"
#include "widgets/seen_refresh.h"

#include <QAction>
#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QStackedLayout>
#include <QVBoxLayout>

#include <cmath>

namespace miterbook {

CutPage::CutPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_cut(new CutDesk(desk, figures, this))
    , m_stack(new QStackedLayout(this))
    , m_level(new QComboBox)
    , m_summary(plainLabel({}))
    , m_tabs(new PageTabs)
    , m_measures(new MeasuresTab(*m_cut))
    , m_sheet(new SheetTab(*m_cut))
    , m_sticks(new SticksTab(*m_cut))
    , m_assembly(new AssemblyTab(*m_cut))
    , m_check(new SawCheckTab(*m_cut))
    , m_bench(new BenchTab(*m_cut)) {
    addTabs();
    auto* top = new QHBoxLayout;
    auto* name = new QLabel(tr("&Level"));
    name->setBuddy(m_level);
    m_level->setAccessibleName(tr("Level"));
    top->addWidget(name);
    top->addWidget(m_level);
    top->addWidget(m_summary, 1);
    auto* work = new QWidget;
    auto* layout = new QVBoxLayout(work);
    layout->addLayout(top);
    layout->addWidget(m_tabs, 1);
    m_stack->addWidget(work);
    m_stack->addWidget(new EmptyPage(tr("A house is cut for, not a plan"),
        tr("Start a house from this plan: it is measured, cut and assembled by itself."), nullptr));
    connect(m_level, &QComboBox::activated, this,
        [this] { m_cut->setLevel(Id<Level>(m_level->currentData().toLongLong())); });
    auto* seen = new SeenRefresh(this, [this] { refresh(); });
    connect(m_cut, &CutDesk::reckoned, seen, &SeenRefresh::want);
}

void CutPage::addTabs() {
    m_tabs->addTab(m_measures, tr("Measures"));
    m_tabs->addTab(m_sheet, tr("Saw sheet"));
    m_tabs->addTab(m_sticks, tr("Sticks"));
    m_tabs->addTab(m_assembly, tr("Assembly"));
    m_tabs->addTab(m_check, tr("Saw check"));
    m_tabs->addTab(m_bench, tr("Bench and moisture"));
}

void CutPage::fillLevels() {
    QStringList names{tr("All levels")};
    for (const Level& level : m_cut->whole().levels)
        names << text(level.name);
    QStringList present;
    for (int i = 0; i < m_level->count(); ++i)
        present << m_level->itemText(i);
    if (present != names) {
        m_level->clear();
        m_level->addItem(names.front(), qlonglong(0));
        for (const Level& level : m_cut->whole().levels)
            m_level->addItem(text(level.name), qlonglong(level.id.value()));
    }
    m_level->setCurrentIndex(std::max(0, m_level->findData(qlonglong(m_cut->level().value()))));
}

void CutPage::refresh() {
    m_stack->setCurrentIndex(m_cut->plan() ? 0 : 1);
    fillLevels();
    const BatchSavings saved = savingsOn(m_cut->figures(), m_cut->book().bench(), m_cut->level());
    m_summary->setText(saved.byPiece.stopMoves == 0
            ? tr("Nothing to cut yet.")
            : tr("%1 pieces off %2 stop settings. Piece by piece it would be %3 more stop moves "
                 "and %4 more tape pulls: about %5 minutes.")
                  .arg(saved.byPiece.stopMoves)
                  .arg(saved.byBatch.stopMoves)
                  .arg(saved.stopMovesSaved())
                  .arg(saved.tapePullsSaved())
                  .arg(std::lround(saved.minutesSaved())));
}

QString CutPage::summary() const {
    return m_summary->text();
}

QString CutPage::nextStep() const {
    if (!m_cut->plan())
        return tr("start a house from this plan");
    const auto& units = m_cut->figures().units;
    if (m_cut->figures().sheet.pieces.empty())
        return tr("enter openings on the Plan page; the saw sheet follows");
    qsizetype unmeasured = 0;
    for (const OpeningUnit& unit : units)
        unmeasured += unit.isMeasured() ? 0 : 1;
    if (unmeasured > 0)
        return counted(unmeasured, tr("measure the opening that has not been measured"),
            tr("measure the %1 openings that have not been measured"));
    if (!m_cut->figures().sheet.problems.empty())
        return tr("look at what is said below the saw sheet");
    qsizetype open = 0;
    for (const SheetPiece& piece : m_cut->figures().sheet.pieces)
        open += piece.isCut() ? 0 : 1;
    if (open > 0)
        return counted(open, tr("cut the last piece"), tr("cut %1 pieces"));
    const Length keep = m_cut->book().prices.practice().keepOffcut;
    return dropsOf(m_cut->figures().sheet, keep).empty()
        ? QString()
        : tr("put remainders in the rack (Sticks)");
}

} // namespace miterbook
