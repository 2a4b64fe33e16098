// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/plan_revision.h"

#include <QWidget>

class QLabel;

namespace miterbook {

class Desk;
class FigureDesk;

/// Over the plan of a house: says that its builder's plan has been revised since, and leads to what
/// would change. Hidden where nothing would.
class RevisionBar final : public QWidget {
    Q_OBJECT
public:
    RevisionBar(Desk& desk, FigureDesk& figures, QWidget* parent = nullptr);

    /// Looks again; opens the builder's plan where that is needed.
    void refresh();
    const std::vector<PlanRevision>& revisions() const { return m_revisions; }
    /// Takes over, or keeps the house's own, in some of the revisions.
    void settle(const std::vector<PlanRevision>& taken, const std::vector<PlanRevision>& kept);
    void ask();

private:
    void follow(const std::vector<Change>& changes);

    Desk& m_desk;
    FigureDesk& m_figures;
    std::vector<PlanRevision> m_revisions;
    QLabel* m_words;
};

} // namespace miterbook
