// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/job_papers.h"

namespace miterbook {

/// A small invented job with figures made by hand, so that papers are tested for what they say and
/// not for what a takeoff or an estimate finds.
struct SampleJob {
    Book book;
    JobFigures figures;
    Id<Plan> plan{21};
    Id<Plan> ownPlan{22}; ///< the house's own copy
    Id<House> house{23};
    Id<Level> ground{31};
    Id<Level> upper{32};
    Id<Variant> elevation{71};
    Id<Variant> option{72};

    SampleJob();

    Shop& shop() { return m_shop; }
    Terms& terms() { return m_terms; }
    Builder& builder() { return m_builder; }
    /// Puts the changed shop, terms and builder into the book.
    void refresh();

    PaperJob planJob() const;  ///< the builder's plan with elevation and option chosen
    PaperJob houseJob() const; ///< a house started from it

private:
    void fillPrices();
    void fillPlans();
    void fillWhole();
    void fillTakeoff();
    void fillEstimate();
    void fillOrder();

    Shop m_shop;
    Terms m_terms;
    Builder m_builder;
};

} // namespace miterbook
