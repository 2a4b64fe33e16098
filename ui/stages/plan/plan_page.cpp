// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/plan_page.h"

#include "basics/length_text.h"
#include "cut/saw_place.h"
#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "job/cut_figures.h"
#include "stages/plan/drawing/plan_panel.h"
#include "stages/plan/live_panel.h"
#include "stages/plan/plan_form.h"
#include "stages/plan/plan_tables.h"
#include "stages/plan/schedule_dialog.h"
#include "stages/plan/target_bar.h"
#include "stages/plan/variants_panel.h"
#include "widgets/accent.h"
#include "widgets/plain_text.h"

#include <QAction>
#include <QPainter>
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
    , m_sawShown(new QAction(tr("Show where the &saw stands best"), this)) {
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
    layout->addWidget(m_target);
    layout->addWidget(split, 1);
    setFocusProxy(m_tables);
    connect(m_target, &TargetBar::chosen, this, &PlanPage::takeTarget);
    connect(m_live, &LivePanel::wanted, this, &PlanPage::showSource);
    connect(&figures, &FigureDesk::figured, this, &PlanPage::showStates);
    connect(m_drawing, &PlanPanel::chosen, m_tables, &PlanTables::showSource);
    connect(m_tables, &PlanTables::rowChosen, m_drawing, &PlanPanel::showSource);
    connect(&desk, &Desk::changed, this, &PlanPage::showStates);
    m_sawShown->setCheckable(true);
    m_drawing->addMore(m_sawShown);
    connect(m_sawShown, &QAction::toggled, this, &PlanPage::showSaw);
    connect(m_drawing, &PlanPanel::levelShown, this, &PlanPage::showSaw);
    connect(&figures, &FigureDesk::figured, this, &PlanPage::showSaw);
}

PlanPage::~PlanPage() = default;

void PlanPage::showJob(const JobRef& job) {
    m_target->showPlan(job.plan);
    m_tables->setTarget(m_target->target());
    m_drawing->setTarget(m_target->target());
    showStates();
    m_variants->showPlan(job.plan);
    m_form->showPlan(job.plan);
    m_tables->setTabVisible(m_tables->indexOf(m_variants), !job.house);
}

void PlanPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    showStates();
}

/// How far windows and doors are, once something has been cut.
void PlanPage::showStates() {
    const JobRef& job = m_figures.job();
    const SheetRows& sheet = m_desk.book().sheet(job.plan);
    m_drawing->view().setStates(statesOf(sheet.of<CutPiece>()));
    if (!isVisible())
        return;
    const bool begun = job.house && !sheet.of<CutPiece>().empty();
    m_tables->setStates(begun
            ? rowStates(cutFiguresFor(m_desk.book(), m_figures.figures()).sheet)
            : std::map<std::int64_t, RowState>());
}

/// What goes into an elevation or option is also looked at with it.
void PlanPage::takeTarget(const EditTarget& target) {
    m_tables->setTarget(target);
    m_drawing->setTarget(target);
    const Variant* variant
        = m_desk.book().sheet(target.plan).of<Variant>().find(target.variant);
    if (!variant || m_figures.job().plan != target.plan)
        return;
    JobRef job = m_figures.job();
    if (variant->kind == VariantKind::elevation)
        job.selection.elevation = variant->id;
    else if (std::ranges::count(job.selection.options, variant->id) == 0)
        job.selection.options.push_back(variant->id);
    m_figures.setJob(job);
}

void PlanPage::showSource(const Source& source) {
    m_drawing->showSource(source);
    if (!m_tables->showSource(source))
        m_tables->setCurrentWidget(m_form);
}

/// A cross with what is walked from there, over the drawing.
void PlanPage::showSaw() {
    const auto saw = m_sawShown->isChecked()
        ? sawPlaceOn(m_figures.figures().whole, m_drawing->level())
        : std::nullopt;
    if (!saw) {
        m_drawing->view().setOverlayer({});
        return;
    }
    const QPointF at(saw->spot.x.toInches(), saw->spot.y.toInches());
    const QString words = tr("Saw: %1 ft to walk").arg(text(formatFeet(saw->walked, 0)));
    m_drawing->view().setOverlayer([this, at, words](QPainter& painter, const ViewFrame& frame) {
        constexpr double reach = 12;
        const QPointF spot = frame.toScreen(at);
        painter.setPen(QPen(accentColour(palette()), 3));
        painter.drawLine(spot - QPointF(reach, reach), spot + QPointF(reach, reach));
        painter.drawLine(spot - QPointF(reach, -reach), spot + QPointF(reach, -reach));
        painter.drawText(spot + QPointF(reach + 4, 4), words);
    });
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
