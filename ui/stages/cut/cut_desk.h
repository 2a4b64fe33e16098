// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/assembly_sets.h"
#include "job/cut_figures.h"

#include <QObject>

#include <optional>
#include <vector>

namespace miterbook {

class Desk;
class FigureDesk;

/// What the page of the saw shows, kept up with the book: the sheet, and one level of it where one
/// is chosen. It is reckoned when somebody asks for it, once after each change.
class CutDesk final : public QObject {
    Q_OBJECT
public:
    CutDesk(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);

    Desk& desk() const { return m_desk; }
    const Book& book() const;
    const WholePlan& whole() const;
    /// The house's own plan; none where the job is a builder's plan, which nobody cuts for.
    Id<Plan> plan() const;
    const CutFigures& figures() const;
    const AssemblyPlan& assembly() const;
    Id<Level> level() const;
    void setLevel(Id<Level> level);
    /// Openings of the level.
    std::vector<const OpeningUnit*> units() const;
    /// Stops of the level, in the order of the sheet.
    std::vector<const SheetStop*> stops() const;

    /// Brings pieces to a state. False when it was refused, as it is when there are none.
    bool tick(const std::vector<std::size_t>& pieces, PieceState state);

Q_SIGNALS:
    /// What is shown has changed.
    void reckoned();

private:
    void forget();

    Desk& m_desk;
    FigureDesk& m_figures;
    Id<Level> m_level;
    mutable std::optional<CutFigures> m_cut;
    mutable std::optional<AssemblyPlan> m_assembly;
};

} // namespace miterbook
