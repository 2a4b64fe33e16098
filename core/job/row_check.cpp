// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/row_check.h"

#include "basics/blank.h"
#include "bill/bill_checks.h"
#include "book/checks.h"
#include "cut/cut_checks.h"
#include "hours/entry_checks.h"
#include "hours/hours_checks.h"
#include "job/book_rows.h"
#include "job/field_check.h"
#include "job/issued_check.h"
#include "job/money_check.h"
#include "job/row_title.h"
#include "job/sent_bids.h"
#include "job/twin_check.h"
#include "job/week_check.h"
#include "plan/plan_checks.h"

#include <algorithm>

namespace miterbook {

namespace {

Result<void> checkNamed(const AnyRow& row, const std::string& name) {
    if (!isBlank(name))
        return {};
    return badInput("The " + std::string(row.noun()) + " needs a name.");
}

// One check for each kind of row, against the book as it will be. What is still being typed may
// lack sizes and names; what is there must be sensible.

template <class Row>
Result<void> checkOne(const Book& after, const Row& row) {
    return check(row, after.prices);
}

Result<void> checkOne(const Book&, const PlanSet& set) {
    return checkNamed(set, set.name);
}

Result<void> checkOne(const Book&, const Plan& plan) {
    if (plan.floorArea < 0)
        return badInput("The floor area of plan \"" + plan.name + "\" is below zero.");
    return checkNamed(plan, plan.name);
}

Result<void> checkOne(const Book&, const House& house) {
    return checkNamed(house, house.name);
}

Result<void> checkOne(const Book&, const BidSetup& setup) {
    return checkBidSetup(setup);
}

Result<void> checkOne(const Book&, const Scenario& scenario) {
    return checkScenario(scenario);
}

Result<void> checkOne(const Book&, const SentBid& bid) {
    return checkSentBid(bid);
}

Result<void> checkOne(const Book&, const Variant& variant) {
    return checkVariant(variant);
}

Result<void> checkOne(const Book&, const Swap& swap) {
    return checkSwap(swap);
}

Result<void> checkOne(const Book&, const Level& level) {
    return checkLevel(level, Missing::allowed);
}

Result<void> checkOne(const Book&, const Room& room) {
    return checkRoom(room, Missing::allowed);
}

Result<void> checkOne(const Book& after, const Opening& opening) {
    if (auto alone = checkOpening(opening, Missing::allowed); !alone)
        return alone;
    const PlanRows& rows = after.sheet(opening.plan);
    if (auto mark = checkMark(opening, rows); !mark)
        return mark;
    return checkOpeningWall(opening, rows);
}

Result<void> checkOne(const Book&, const Closet& closet) {
    return checkCloset(closet, Missing::allowed);
}

Result<void> checkOne(const Book&, const Stair& stair) {
    return checkStair(stair, Missing::allowed);
}

Result<void> checkOne(const Book&, const WallTreatment& treatment) {
    return checkTreatment(treatment, Missing::allowed);
}

Result<void> checkOne(const Book&, const OtherWork& other) {
    return checkOtherWork(other);
}

Result<void> checkOne(const Book&, const SheetFile& file) {
    return checkSheetFile(file);
}

Result<void> checkOne(const Book&, const Underlay& underlay) {
    return checkUnderlay(underlay);
}

Result<void> checkOne(const Book&, const Dismissal& dismissal) {
    return checkDismissal(dismissal);
}

Result<void> checkOne(const Book&, const Bench& bench) {
    return checkBench(bench);
}

Result<void> checkOne(const Book&, const Measure& measure) {
    return checkMeasure(measure);
}

Result<void> checkOne(const Book&, const CutPiece& piece) {
    return checkCutPiece(piece);
}

Result<void> checkOne(const Book&, const SawTest& test) {
    return checkSawTest(test);
}

Result<void> checkOne(const Book&, const RackMove& move) {
    return checkRackMove(move);
}

Result<void> checkOne(const Book&, const SawSpot& spot) {
    return checkSawSpot(spot);
}

Result<void> checkOne(const Book&, const PlanTie& tie) {
    if (tie.kind.empty() || tie.own < 0 || tie.source < 0)
        return badInput("A tie to the builder's plan names the rows that it ties.");
    return {};
}

Result<void> checkOne(const Book&, const TimeEntry& entry) {
    return checkEntry(entry);
}

Result<void> checkOne(const Book&, const Timer& timer) {
    return checkTimer(timer);
}

Result<void> checkOne(const Book&, const WorkDone& said) {
    return checkWorkDone(said);
}

Result<void> checkOne(const Book&, const WeekApproval& approval) {
    return checkApproval(approval);
}

Result<void> checkOne(const Book&, const PayTerms& terms) {
    return checkPayTerms(terms);
}

Result<void> checkOne(const Book&, const CrewPay& pay) {
    return checkCrewPay(pay);
}

Result<void> checkOne(const Book&, const PieceRate& rate) {
    return checkPieceRate(rate);
}

Result<void> checkOne(const Book&, const SoldWork& sold) {
    return checkSoldWork(sold);
}

Result<void> checkOne(const Book&, const SoldTask& sold) {
    return checkSoldTask(sold);
}

Result<void> checkOne(const Book&, const BillingSetup& setup) {
    return checkBillingSetup(setup);
}

Result<void> checkOne(const Book&, const BillingTerms& terms) {
    return checkBillingTerms(terms);
}

Result<void> checkOne(const Book&, const Contract& contract) {
    return checkContract(contract);
}

Result<void> checkOne(const Book&, const Extra& extra) {
    return checkExtra(extra);
}

Result<void> checkOne(const Book&, const ExtraLine& line) {
    return checkExtraLine(line);
}

Result<void> checkOne(const Book&, const Backcharge& backcharge) {
    return checkBackcharge(backcharge);
}

Result<void> checkOne(const Book&, const Payment& payment) {
    return checkPayment(payment);
}

Result<void> checkOne(const Book&, const Reminder& reminder) {
    return checkReminder(reminder);
}

Result<void> checkOne(const Book&, const HouseDate& date) {
    return checkHouseDate(date);
}

Result<void> checkOne(const Book&, const Attachment& photo) {
    return checkAttachment(photo);
}

/// What is issued and how payments are parted is looked at with the whole edit.
template <class Row>
concept CheckedWithEdit = isOneOf<Row, Invoice, InvoiceLine, InvoiceVoid, IssuedPaper, Allocation>;

template <CheckedWithEdit Row>
Result<void> checkOne(const Book&, const Row&) {
    return {};
}

/// A change is of one row, which stays below its plan.
Result<void> checkSameRow(const Change& change) {
    if (!change.before)
        return {};
    const AnyRow& before = *change.before;
    const AnyRow& after = *change.after;
    bool same = before.kind() == after.kind() && before.id() == after.id();
    if (isBelowPlan(after.kind()))
        same = same && planOf(before) == planOf(after);
    return same ? Result<void>()
                : badInput("The " + titleOf(after) + " cannot become another row.");
}

bool isRemoved(const Edit& edit, Id<House> id) {
    return std::ranges::any_of(edit.changes, [&](const Change& change) {
        const House* house = change.row().as<House>();
        return house && house->id == id && !change.after;
    });
}

/// Options are kept as a list, which the book file cannot guard as it does single references.
Result<void> checkUnused(const Book& book, const Edit& edit, const Variant& variant) {
    for (const auto& [id, house] : book.jobs.of<House>()) {
        if (std::ranges::count(house.options, variant.id) > 0 && !isRemoved(edit, id)) {
            return Error{Fault::conflict,
                "The " + titleOf(variant) + " is still used by the " + titleOf(house) + "."};
        }
    }
    return {};
}

/// What the checks look at of the book as the edit will leave it: the shop's own rows and the plans
/// that the edit touches.
Book bookAfter(const Book& book, const Edit& edit) {
    Book after;
    after.prices = book.prices;
    for (const Change& change : edit.changes) {
        const AnyRow& row = change.row();
        if (isBelowPlan(row.kind()))
            after.sheets.try_emplace(planOf(row), book.sheet(planOf(row)));
    }
    apply(after, edit);
    return after;
}

Result<void> checkPut(const Book& after, const Change& change) {
    if (auto fields = checkFields(*change.after); !fields)
        return fields;
    if (auto same = checkSameRow(change); !same)
        return same;
    return visitRow(*change.after, [&](const auto& row) { return checkOne(after, row); });
}

} // namespace

Result<void> checkRows(const Book& book, const Edit& edit) {
    if (auto open = checkWeeksOpen(book, edit); !open)
        return open;
    const Book after = bookAfter(book, edit);
    for (const Change& change : edit.changes) {
        const Variant* variant = change.row().as<Variant>();
        Result<void> checked;
        if (change.after)
            checked = checkPut(after, change);
        else if (variant)
            checked = checkUnused(book, edit, *variant);
        if (!checked)
            return checked;
    }
    if (auto issued = checkIssued(book, edit); !issued)
        return issued;
    if (auto sent = checkSentBids(book, edit); !sent)
        return sent;
    if (auto twins = checkTwins(book, edit); !twins)
        return twins;
    return checkMoney(book, edit);
}

} // namespace miterbook
