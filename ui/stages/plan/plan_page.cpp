// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/plan_page.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "job/cut_figures.h"
#include "stages/plan/drawing/plan_panel.h"
#include "stages/plan/live_panel.h"
#include "stages/plan/plan_form.h"
#include "stages/plan/plan_tables.h"
#include "stages/plan/revision_bar.h"
#include "stages/plan/saw_overlay.h"
#include "stages/plan/schedule_dialog.h"
#include "stages/plan/target_bar.h"
#include "stages/plan/variants_panel.h"
#include "widgets/plain_text.h"

#include <QAction>
#include <QSplitter>
#include <QVBoxLayout>

#include <algorithm>

namespace miterbook {

PlanPage::PlanPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_target(new TargetBar(desk))
    , m_drawing(new PlanPanel(desk))
    , m_tables(new PlanTables(desk))
    , m_variants(new VariantsPanel(desk))
    , m_form(new PlanForm(desk))
    , m_live(new LivePanel(desk, figures))
    , m_revisions(new RevisionBar(desk, figures)) {
    m_tables->addTab(m_variants, tr("Elevations and options"));
    m_tables->addTab(m_form, tr("Plan and profiles"));
    auto* both = new QSplitter(Qt::Vertical);
    both->addWidget(m_drawing);
    both->addWidget(m_tables);
    both->setStretchFactor(0, 3);
    both->setStretchFactor(1, 2);
    both->setSizes({560, 400});
    auto* split = new QSplitter;
    split->addWidget(both);
    split->addWidget(m_live);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 1);
    split->setChildrenCollapsible(false);
    split->setSizes({720, 280}); // shares, whatever the width
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_revisions);
    layout->addWidget(m_target);
    layout->addWidget(split, 1);
    setFocusProxy(m_tables);
    connect(m_target, &TargetBar::chosen, this, &PlanPage::takeTarget);
    connect(m_live, &LivePanel::wanted, this, &PlanPage::showSource);
    connect(&figures, &FigureDesk::figured, this, &PlanPage::showStates);
    connect(&figures, &FigureDesk::sawRowsChanged, this, &PlanPage::showStates);
    connect(&figures, &FigureDesk::figured, this, &PlanPage::showSeen);
    connect(m_drawing, &PlanPanel::seenSwitched, this, &PlanPage::switchSeen);
    connect(m_drawing, &PlanPanel::chosen, m_tables, &PlanTables::showSource);
    connect(m_tables, &PlanTables::rowChosen, m_drawing, &PlanPanel::showSource);
    new SawOverlay(desk, figures, *m_drawing, this);
}

PlanPage::~PlanPage() = default;

void PlanPage::showJob(const JobRef& job) {
    m_target->showPlan(job.plan);
    m_tables->setTarget(m_target->target());
    m_drawing->setTarget(m_target->target());
    showSeen();
    showStates();
    m_variants->showPlan(job.plan);
    m_form->showPlan(job.plan);
    m_revisions->refresh();
    m_tables->setTabVisible(m_tables->indexOf(m_variants), !job.house);
}

void PlanPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    showStates();
    m_revisions->refresh();
}

/// How far windows and doors are, once something has been cut.
void PlanPage::showStates() {
    if (!isVisible())
        return;
    const JobRef& job = m_figures.job();
    const bool begun = job.house && !m_desk.book().sheet(job.plan).of<CutPiece>().empty();
    const OpeningStates states = begun
        ? openingStates(cutFiguresFor(m_desk.book(), m_figures.figures()).sheet)
        : OpeningStates();
    m_drawing->view().setStates(states);
    m_tables->setStates(states);
}

/// What goes into an elevation or option is also looked at with it.
void PlanPage::takeTarget(const EditTarget& target) {
    m_tables->setTarget(target);
    m_drawing->setTarget(target);
    if (target.variant)
        switchSeen(target.variant, true);
}

/// The drawing is looked at with what takeoff and price are looked at with.
void PlanPage::showSeen() {
    const Selection& selection = m_figures.job().selection;
    std::vector<Id<Variant>> seen;
    if (selection.elevation)
        seen.push_back(selection.elevation);
    seen.insert(seen.end(), selection.options.begin(), selection.options.end());
    m_drawing->setSeen(seen);
}

void PlanPage::switchSeen(Id<Variant> id, bool on) {
    JobRef job = m_figures.job();
    const Variant* variant = m_desk.book().sheet(job.plan).of<Variant>().find(id);
    if (!variant)
        return;
    std::vector<Id<Variant>>& options = job.selection.options;
    if (variant->kind == VariantKind::elevation)
        job.selection.elevation = on ? id : Id<Variant>();
    else if (!on)
        std::erase(options, id);
    else if (std::ranges::count(options, id) == 0)
        options.push_back(id);
    if (!on && m_target->target().variant == id)
        m_target->choose({}); // what is not looked at is not changed
    if (!(job == m_figures.job()))
        m_figures.setJob(job);
}

void PlanPage::showSource(const Source& source) {
    m_drawing->showSource(source);
    if (!m_tables->showSource(source))
        m_tables->setCurrentWidget(m_form);
}

QList<QAction*> PlanPage::drawingActions() const {
    return m_drawing->actions();
}

void PlanPage::restoreRows() {
    m_tables->restoreRows();
}

void PlanPage::bringSchedule(ScheduleKind kind) {
    const Id<Plan> plan = m_figures.job().plan;
    if (!plan)
        return;
    ScheduleDialog dialog(m_desk, kind, plan, this);
    dialog.exec();
}

QString PlanPage::nextStep() const {
    const JobFigures& figures = m_figures.figures();
    if (const auto revised = static_cast<qsizetype>(m_revisions->revisions().size()); revised > 0)
        return counted(revised, tr("look at what the builder has revised"),
            tr("look at the %1 things that the builder has revised"));
    if (figures.whole.levels.empty())
        return tr("type the levels");
    if (figures.whole.rooms.empty())
        return tr("type the rooms, or bring in the room schedule");
    if (figures.whole.openings.empty())
        return tr("type windows and doors, or bring in their schedules");
    if (m_live->problems() > 0)
        return counted(m_live->problems(), tr("put right a problem"), tr("put right %1 problems"));
    if (m_live->remarks() > 0)
        return counted(m_live->remarks(), tr("look at one remark beside the tables"),
            tr("look at %1 remarks beside the tables"));
    return tr("look over the takeoff (Ctrl+2)");
}

} // namespace miterbook
