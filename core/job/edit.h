// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "job/book.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace miterbook {

/// Any row of the book.
using AnyRow = std::variant<Shop, Practice, Terms, Builder, Profile, Stick, StickPrice, Offcut,
    Part, Consumable, LabourRate, Factor, PiecePrice, CrewMember, Burden, HeaderName, PlanSet, Plan,
    House, BidSetup, Scenario, Variant, Swap, Level, Room, Opening, Closet, Stair, WallTreatment,
    OtherWork, SheetFile, Underlay, Dismissal, Bench, Measure, CutPiece, SawTest, RackMove,
    SawSpot, PlanTie,
    TimeEntry, Timer, WeekApproval, PayTerms, CrewPay, PieceRate, SoldWork, SoldTask, BillingSetup,
    BillingTerms, Contract, Extra, Backcharge, IssuedPaper, SentBid, Invoice, InvoiceVoid, Payment,
    Allocation, Reminder, HouseDate, ExtraLine, InvoiceLine, Attachment>;

/// One row before and after. No before: the row is new. No after: it is removed. Where both are
/// there they are of the same kind and id.
struct Change {
    std::optional<AnyRow> before;
    std::optional<AnyRow> after;

    // Out of line, like all that copies or compares rows of every kind: that is much code in each
    // file.
    Change();
    Change(std::optional<AnyRow> before, std::optional<AnyRow> after);
    Change(const Change&);
    Change(Change&&) noexcept;
    Change& operator=(const Change&);
    Change& operator=(Change&&) noexcept;
    ~Change();

    /// The row that is there: after, or before when removed.
    const AnyRow& row() const { return after ? *after : *before; }
    bool operator==(const Change&) const;
};

/// One gesture of the user: a sentence for the undo list and journal ("Revise window W4"), and what
/// it changes.
struct Edit {
    std::string sentence;
    std::vector<Change> changes;

    bool empty() const { return changes.empty(); }
    bool operator==(const Edit&) const = default;
};

/// The edit that takes `edit` back.
Edit inverse(const Edit& edit);

/// Whether the book holds what the edit's `before` rows say; Fault::conflict with a sentence if
/// not.
Result<void> check(const Book& book, const Edit& edit);

/// Puts the edit's rows into the book. The edit must have passed check().
void apply(Book& book, const Edit& edit);

/// Gathers the changes of one gesture. Looks up what the book holds, so callers only say what shall
/// be; a second put of the same row replaces the first.
class EditBuilder {
public:
    EditBuilder(const Book& book, std::string sentence)
        : m_book(book)
        , m_edit{std::move(sentence), {}} {}

    // Both are made for each kind of AnyRow in edit_builder.cpp.

    /// Adds or changes a row. Putting a row as it already is changes nothing.
    template <class Row>
    EditBuilder& put(Row row);
    /// Removes a row; nothing when it is not there.
    template <class Row>
    EditBuilder& remove(Id<Row> id);
    /// The row as the edit will leave it; nullptr when it will not be there.
    template <class Row>
    const Row* find(Id<Row> id) const;
    Edit take() { return std::move(m_edit); }
    /// As it is before the edit.
    const Book& book() const { return m_book; }

private:
    /// Takes in that `row` shall be, or shall be removed, where the book holds `before`.
    void record(std::optional<AnyRow> before, AnyRow row, bool removed);

    const Book& m_book;
    Edit m_edit;
};

/// An edit of one row.
template <class Row>
Edit putEdit(const Book& book, std::string sentence, Row row) {
    return EditBuilder(book, std::move(sentence)).put(std::move(row)).take();
}

// ---------------------------------------------------------------------------------------------

template <class Row>
const Row* EditBuilder::find(Id<Row> id) const {
    for (const Change& change : m_edit.changes) {
        const Row* row = std::get_if<Row>(&change.row());
        if (row && row->id == id)
            return change.after ? row : nullptr;
    }
    return findRow(m_book, id);
}

} // namespace miterbook
