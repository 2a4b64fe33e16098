// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/edit.h"

#include <algorithm>

namespace miterbook {

namespace {

bool isSameRow(const AnyRow& a, const AnyRow& b) {
    if (a.index() != b.index())
        return false;
    const auto id = [](const AnyRow& row) {
        return std::visit([](const auto& any) { return any.id.value(); }, row);
    };
    return id(a) == id(b);
}

} // namespace

void EditBuilder::record(std::optional<AnyRow> before, AnyRow row, bool removed) {
    std::optional<AnyRow> after;
    if (!removed)
        after = row;
    const auto same = std::ranges::find_if(
        m_edit.changes, [&](const Change& change) { return isSameRow(change.row(), row); });
    if (same == m_edit.changes.end()) {
        if (before != after)
            m_edit.changes.push_back({std::move(before), std::move(after)});
        return;
    }
    same->after = std::move(after);
    if (same->before == same->after)
        m_edit.changes.erase(same);
}

template <class Row>
EditBuilder& EditBuilder::put(Row row) {
    const Row* present = findRow(m_book, row.id);
    record(present ? std::optional<AnyRow>(*present) : std::nullopt, AnyRow(std::move(row)), false);
    return *this;
}

template <class Row>
EditBuilder& EditBuilder::remove(Id<Row> id) {
    const Row* present = findRow(m_book, id);
    Row row = present ? *present : Row();
    row.id = id;
    record(present ? std::optional<AnyRow>(row) : std::nullopt, AnyRow(row), true);
    return *this;
}

// One line for each kind of AnyRow; a kind left out does not link.
#define MITERBOOK_EDITED(Row)                                                                      \
    template EditBuilder& EditBuilder::put(Row);                                                   \
    template EditBuilder& EditBuilder::remove(Id<Row>);

MITERBOOK_EDITED(Shop)
MITERBOOK_EDITED(Practice)
MITERBOOK_EDITED(Terms)
MITERBOOK_EDITED(Builder)
MITERBOOK_EDITED(Profile)
MITERBOOK_EDITED(Stick)
MITERBOOK_EDITED(StickPrice)
MITERBOOK_EDITED(Offcut)
MITERBOOK_EDITED(Part)
MITERBOOK_EDITED(Consumable)
MITERBOOK_EDITED(LabourRate)
MITERBOOK_EDITED(Factor)
MITERBOOK_EDITED(PiecePrice)
MITERBOOK_EDITED(CrewMember)
MITERBOOK_EDITED(Burden)
MITERBOOK_EDITED(HeaderName)
MITERBOOK_EDITED(PlanSet)
MITERBOOK_EDITED(Plan)
MITERBOOK_EDITED(House)
MITERBOOK_EDITED(BidSetup)
MITERBOOK_EDITED(Scenario)
MITERBOOK_EDITED(Variant)
MITERBOOK_EDITED(Swap)
MITERBOOK_EDITED(Level)
MITERBOOK_EDITED(Room)
MITERBOOK_EDITED(Opening)
MITERBOOK_EDITED(Closet)
MITERBOOK_EDITED(Stair)
MITERBOOK_EDITED(WallTreatment)
MITERBOOK_EDITED(OtherWork)
MITERBOOK_EDITED(SheetFile)
MITERBOOK_EDITED(Underlay)
MITERBOOK_EDITED(Dismissal)
MITERBOOK_EDITED(Bench)
MITERBOOK_EDITED(Measure)
MITERBOOK_EDITED(CutPiece)
MITERBOOK_EDITED(SawTest)
MITERBOOK_EDITED(RackMove)
MITERBOOK_EDITED(SawSpot)
MITERBOOK_EDITED(PlanTie)
MITERBOOK_EDITED(TimeEntry)
MITERBOOK_EDITED(Timer)
MITERBOOK_EDITED(WeekApproval)
MITERBOOK_EDITED(PayTerms)
MITERBOOK_EDITED(CrewPay)
MITERBOOK_EDITED(PieceRate)
MITERBOOK_EDITED(SoldWork)
MITERBOOK_EDITED(SoldTask)
MITERBOOK_EDITED(BillingSetup)
MITERBOOK_EDITED(BillingTerms)
MITERBOOK_EDITED(Contract)
MITERBOOK_EDITED(Extra)
MITERBOOK_EDITED(Backcharge)
MITERBOOK_EDITED(IssuedPaper)
MITERBOOK_EDITED(SentBid)
MITERBOOK_EDITED(Invoice)
MITERBOOK_EDITED(InvoiceVoid)
MITERBOOK_EDITED(Payment)
MITERBOOK_EDITED(Allocation)
MITERBOOK_EDITED(Reminder)
MITERBOOK_EDITED(HouseDate)
MITERBOOK_EDITED(ExtraLine)
MITERBOOK_EDITED(InvoiceLine)
MITERBOOK_EDITED(Attachment)

#undef MITERBOOK_EDITED

} // namespace miterbook
