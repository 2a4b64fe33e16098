// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/cut_desk.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "stages/cut/cut_edits.h"

namespace miterbook {

CutDesk::CutDesk(Desk& desk, FigureDesk& figures, QObject* parent)
    : QObject(parent)
    , m_desk(desk)
    , m_figures(figures) {
    connect(&figures, &FigureDesk::figured, this, &CutDesk::reckon);
    reckon();
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

void CutDesk::setLevel(Id<Level> level) {
    if (level == m_level)
        return;
    m_level = level;
    assemble();
    Q_EMIT reckoned();
}

void CutDesk::reckon() {
    if (m_level && !whole().level(m_level))
        m_level = {};
    m_cut = plan() ? cutFiguresFor(book(), m_figures.figures()) : CutFigures();
    assemble();
    Q_EMIT reckoned();
}

void CutDesk::assemble() {
    m_assembly = assemblyPlan(m_cut.sheet, m_level, book().bench(), book().prices);
}

std::vector<const OpeningUnit*> CutDesk::units() const {
    std::vector<const OpeningUnit*> units;
    for (const OpeningUnit& unit : m_cut.units) {
        if (!m_level || unit.opening.level == m_level)
            units.push_back(&unit);
    }
    return units;
}

std::vector<const SheetStop*> CutDesk::stops() const {
    std::vector<const SheetStop*> stops;
    for (const SheetStop& stop : m_cut.sheet.stops) {
        if (!m_level || stop.level == m_level)
            stops.push_back(&stop);
    }
    return stops;
}

bool CutDesk::tick(const std::vector<std::size_t>& pieces, PieceState state) {
    if (pieces.empty() || !plan())
        return false;
    return m_desk.perform(tickEdit(book(), m_desk.ids(), plan(), m_cut.sheet, pieces, state));
}

} // namespace miterbook
