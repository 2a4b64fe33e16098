// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/assembly_sets.h"
#include "job/cut_figures.h"

#include <QObject>

namespace miterbook {

class Desk;
class FigureDesk;

/// What the page of the saw shows, kept up with the book: the sheet, and one level of it where one
/// is chosen.
class CutDesk final : public QObject {
    Q_OBJECT
public:
    CutDesk(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);

    Desk& desk() const { return m_desk; }
    const Book& book() const;
    const WholePlan& whole() const;
    /// The house's own plan; none where the job is a builder's plan, which nobody cuts for.
    Id<Plan> plan() const;
    const CutFigures& figures() const { return m_cut; }
    const AssemblyPlan& assembly() const { return m_assembly; }
    Id<Level> level() const { return m_level; }
    void setLevel(Id<Level> level);
    /// Openings of the level.
    std::vector<const OpeningUnit*> units() const;
    /// Stops of the level, in the order of the sheet.
    std::vector<const SheetStop*> stops() const;

    /// Brings pieces to a state. False when there are none or it was refused.
    bool tick(const std::vector<std::size_t>& pieces, PieceState state);

Q_SIGNALS:
    void reckoned();

private:
    void reckon();
    void assemble();

    Desk& m_desk;
    FigureDesk& m_figures;
    Id<Level> m_level;
    CutFigures m_cut;
    AssemblyPlan m_assembly;
};

} // namespace miterbook
