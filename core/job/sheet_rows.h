// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/extra_price.h"
#include "bill/invoice.h"
#include "cut/cut_rows.h"
#include "hours/sold_bid.h"
#include "job/attachment.h"
#include "job/issued_paper.h"
#include "plan/plan_rows.h"
#include "plan/plan_tie.h"

namespace miterbook {

/// The tasks of a house's bid as it was won.
using SoldRows = Tables<SoldTask>;

/// What hangs on a house's own plan of its extras and bills, and the papers issued on any plan.
using BillRows = Tables<ExtraLine, InvoiceLine, IssuedPaper, Attachment>;

/// How a house's rows hang together with the builder's plan.
using TieRows = Tables<PlanTie>;

/// Everything that is read when a plan is opened: the plan's own rows, and those of the day at the
/// saw, of the bid that was won, of its bills and its ties where it is a house's.
class SheetRows : public PlanRows {
public:
    template <class Row>
    static constexpr bool holds = heldByAny<Row, PlanRows, CutRows, SoldRows, BillRows, TieRows>;

    // Out of line: copying all these rows is much code in each file.
    SheetRows();
    SheetRows(const SheetRows&);
    SheetRows(SheetRows&&) noexcept;
    SheetRows& operator=(const SheetRows&);
    SheetRows& operator=(SheetRows&&) noexcept;
    ~SheetRows();
    SheetRows(PlanRows plan)
        : PlanRows(std::move(plan)) {}

    template <class Row>
    Table<Row>& of() {
        if constexpr (CutRows::holds<Row>)
            return m_cut.of<Row>();
        else if constexpr (SoldRows::holds<Row>)
            return m_sold.of<Row>();
        else if constexpr (BillRows::holds<Row>)
            return m_bill.of<Row>();
        else if constexpr (TieRows::holds<Row>)
            return m_ties.of<Row>();
        else
            return PlanRows::of<Row>();
    }
    template <class Row>
    const Table<Row>& of() const {
        if constexpr (CutRows::holds<Row>)
            return m_cut.of<Row>();
        else if constexpr (SoldRows::holds<Row>)
            return m_sold.of<Row>();
        else if constexpr (BillRows::holds<Row>)
            return m_bill.of<Row>();
        else if constexpr (TieRows::holds<Row>)
            return m_ties.of<Row>();
        else
            return PlanRows::of<Row>();
    }
    template <class Fn>
    void forEach(Fn&& fn) const {
        PlanRows::forEach(fn);
        m_cut.forEach(fn);
        m_sold.forEach(fn);
        m_bill.forEach(fn);
        m_ties.forEach(fn);
    }
    PlanRows& planRows() { return *this; }
    CutRows& cutRows() { return m_cut; }
    const CutRows& cutRows() const { return m_cut; }
    SoldRows& soldRows() { return m_sold; }
    BillRows& billRows() { return m_bill; }
    TieRows& tieRows() { return m_ties; }

    bool operator==(const SheetRows&) const;

private:
    CutRows m_cut;
    SoldRows m_sold;
    BillRows m_bill;
    TieRows m_ties;
};

} // namespace miterbook
