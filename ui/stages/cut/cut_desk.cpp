// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/cut_desk.h"

#include "basics/quote.h"
#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "stages/cut/cut_edits.h"

namespace miterbook {

CutDesk::CutDesk(Desk& desk, FigureDesk& figures, QObject* parent)
    : QObject(parent)
    , m_desk(desk)
    , m_figures(figures) {
    connect(&figures, &FigureDesk::figured, this, &CutDesk::forget);
    connect(&figures, &FigureDesk::sawRowsChanged, this, &CutDesk::forget);
}

const Book& CutDesk::book() const {
    return m_desk.book();
}

const WholePlan& CutDesk::whole() const {
    return m_figures.figures().whole;
}

Id<Plan> CutDesk::plan() const {
    return m_figures.job().house ? m_figures.job().plan : Id<Plan>();
}

Id<Level> CutDesk::level() const {
    return whole().level(m_level) ? m_level : Id<Level>();
}

void CutDesk::setLevel(Id<Level> level) {
    if (level == m_level)
        return;
    m_level = level;
    m_assembly.reset();
    Q_EMIT reckoned();
}

void CutDesk::forget() {
    m_cut.reset();
    m_assembly.reset();
    Q_EMIT reckoned();
}

const CutFigures& CutDesk::figures() const {
    if (!m_cut)
        m_cut = plan() ? cutFiguresFor(book(), m_figures.figures()) : CutFigures();
    return *m_cut;
}

const AssemblyPlan& CutDesk::assembly() const {
    if (!m_assembly)
        m_assembly = assemblyPlan(figures().sheet, level(), book().bench(), book().prices);
    return *m_assembly;
}

std::vector<const OpeningUnit*> CutDesk::units() const {
    const Id<Level> shown = level();
    std::vector<const OpeningUnit*> units;
    for (const OpeningUnit& unit : figures().units) {
        if (!shown || unit.opening.level == shown)
            units.push_back(&unit);
    }
    return units;
}

std::vector<const SheetStop*> CutDesk::stops() const {
    const Id<Level> shown = level();
    std::vector<const SheetStop*> stops;
    for (const SheetStop& stop : figures().sheet.stops) {
        if (!shown || stop.level == shown)
            stops.push_back(&stop);
    }
    return stops;
}

bool CutDesk::tick(const std::vector<std::size_t>& pieces, PieceState state) {
    if (!plan())
        return false;
    if (pieces.empty()) {
        m_desk.refuse(badInput(state == PieceState::spoiled
                ? "Choose what has been cut: only that can be spoiled."
                : "Choose rows first: nothing that is chosen can be marked "
                    + inQuotes(std::string(word(state))) + "."));
        return false;
    }
    return m_desk.perform(tickEdit(book(), m_desk.ids(), plan(), figures().sheet, pieces, state));
}

} // namespace miterbook
