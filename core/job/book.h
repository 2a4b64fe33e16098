// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/tables.h"
#include "bid/bid_setup.h"
#include "bid/scenario.h"
#include "bill/billing_setup.h"
#include "bill/billing_terms.h"
#include "bill/reminder.h"
#include "book/price_book.h"
#include "cut/bench.h"
#include "hours/approval.h"
#include "hours/pay_terms.h"
#include "hours/time_book.h"
#include "hours/timer.h"
#include "hours/work_done.h"
#include "job/house.h"
#include "job/house_date.h"
#include "job/sent_bid.h"
#include "job/sheet_rows.h"
#include "plan/plan_rows.h"
#include "plan/whole_plan.h"

#include <map>

namespace miterbook {

/// Rows of which all are always in memory besides the price book's.
using JobTables = Tables<PlanSet, Plan, House, BidSetup, Scenario, SentBid, Bench, SoldWork, Timer,
    WorkDone, WeekApproval, PayTerms, CrewPay, PieceRate, BillingSetup, BillingTerms, Contract,
    Extra, Backcharge, Invoice, InvoiceVoid, Payment, Allocation, Reminder, HouseDate>;

/// Whether rows of this kind are always in memory and belong to one plan (a house only comes from
/// one).
template <class Row>
inline constexpr bool hangsOnPlan
    = JobTables::holds<Row> && !std::is_same_v<Row, House> && requires(Row row) {
    row.plan = Id<Plan>();
};

/// Whether rows of this kind are always in memory and belong to one house.
template <class Row>
inline constexpr bool hangsOnHouse
    = JobTables::holds<Row> && !std::is_same_v<Row, Plan> && requires(Row row) {
    row.house = Id<House>();
};

/// One shop's whole book as a value. The rows below a plan are there only for plans that have been
/// opened, so that ten years of houses need not be read to look at one.
struct Book {
    PriceBook prices;
    JobTables jobs;
    TimeBook time;                        ///< entries of opened houses and weeks, sums of all
    std::map<Id<Plan>, SheetRows> sheets; ///< one entry for each opened plan

    // Out of line: copying all these rows is much code in each file.
    Book();
    Book(const Book&);
    Book(Book&&) noexcept;
    Book& operator=(const Book&);
    Book& operator=(Book&&) noexcept;
    ~Book();

    const Plan* plan(Id<Plan> id) const { return jobs.of<Plan>().find(id); }
    const House* house(Id<House> id) const { return jobs.of<House>().find(id); }
    /// The plan's rows; none yet for a plan that has not been opened.
    const SheetRows& sheet(Id<Plan> id) const;
    bool isOpen(Id<Plan> id) const { return sheets.contains(id); }
    /// The builder of a plan; nullptr where the plan has no set.
    const Builder* builderOf(const Plan& plan) const;
    /// The plan's setup for bidding; nullptr when it goes by the shop's terms.
    const BidSetup* bidSetup(Id<Plan> id) const;
    /// Numbers and follow-up of bills; starter values before they have been set.
    const BillingSetup& billing() const;
    /// What was agreed on a house; nullptr before it was won.
    const Contract* contract(Id<House> id) const;
    /// Settings of saw and bench; starter values before they have been set.
    const Bench& bench() const;
    /// How the crew is paid; starter values before it has been set.
    const PayTerms& payTerms() const;
    /// The bid of a house as it was won, by piece of work; empty while it is being bid.
    std::vector<WorkBid> soldBid(Id<Plan> work) const;

    bool operator==(const Book&) const;
};

/// Whether rows of this kind hang below a plan and are read when it is opened.
template <class Row>
inline constexpr bool belowPlan = SheetRows::holds<Row>;

template <class Row>
concept AbovePlans = !belowPlan<Row>;

/// The rows of a kind that does not hang below plans.
template <AbovePlans Row>
const Table<Row>& rowsOf(const Book& book) {
    if constexpr (PriceTables::holds<Row>)
        return book.prices.template of<Row>();
    else if constexpr (TimeTables::holds<Row>)
        return book.time.read();
    else
        return book.jobs.template of<Row>();
}

/// The row of an id, wherever it is kept; nullptr when it is not in memory.
template <class Row>
const Row* findRow(const Book& book, Id<Row> id) {
    if constexpr (!belowPlan<Row>) {
        return rowsOf<Row>(book).find(id);
    } else {
        for (const auto& [plan, rows] : book.sheets) {
            if (const Row* row = rows.template of<Row>().find(id))
                return row;
        }
        return nullptr;
    }
}

/// Calls fn(row) for every row that is always in memory and hangs on the plan: its bid setup.
template <class Fn>
void forEachOfPlan(const Book& book, Id<Plan> plan, Fn&& fn) {
    book.jobs.forEach([&]<class Row>(const Table<Row>& table) {
        if constexpr (hangsOnPlan<Row>) {
            for (const auto& [id, row] : table) {
                if (row.plan == plan)
                    fn(row);
            }
        }
    });
}

/// Calls fn(row) for every row that is always in memory and hangs on the house.
template <class Fn>
void forEachOfHouse(const Book& book, Id<House> house, Fn&& fn) {
    book.jobs.forEach([&]<class Row>(const Table<Row>& table) {
        if constexpr (hangsOnHouse<Row>) {
            for (const auto& [id, row] : table) {
                if (row.house == house)
                    fn(row);
            }
        }
    });
}

} // namespace miterbook
