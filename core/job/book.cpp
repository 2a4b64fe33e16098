// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/book.h"

namespace miterbook {

Book::Book() = default;
Book::Book(const Book&) = default;
Book::Book(Book&&) noexcept = default;
Book& Book::operator=(const Book&) = default;
Book& Book::operator=(Book&&) noexcept = default;
Book::~Book() = default;
bool Book::operator==(const Book&) const = default;

const SheetRows& Book::sheet(Id<Plan> id) const {
    static const SheetRows none;
    const auto it = sheets.find(id);
    return it == sheets.end() ? none : it->second;
}

const Builder* Book::builderOf(const Plan& plan) const {
    const PlanSet* set = jobs.of<PlanSet>().find(plan.set);
    return set ? prices.of<Builder>().find(set->builder) : nullptr;
}

const BidSetup* Book::bidSetup(Id<Plan> id) const {
    for (const auto& [setupId, setup] : jobs.of<BidSetup>()) {
        if (setup.plan == id)
            return &setup;
    }
    return nullptr;
}

const BillingSetup& Book::billing() const {
    static const BillingSetup starter = [] {
        BillingSetup setup;
        setup.id = Id<BillingSetup>(1);
        return setup;
    }();
    const BillingSetup* setup = jobs.of<BillingSetup>().find(starter.id);
    return setup ? *setup : starter;
}

const Contract* Book::contract(Id<House> house) const {
    for (const auto& [id, contract] : jobs.of<Contract>()) {
        if (contract.house == house)
            return &contract;
    }
    return nullptr;
}

const Bench& Book::bench() const {
    static const Bench starter = [] {
        Bench bench;
        bench.id = Id<Bench>(1);
        return bench;
    }();
    const Bench* bench = jobs.of<Bench>().find(starter.id);
    return bench ? *bench : starter;
}

const PayTerms& Book::payTerms() const {
    static const PayTerms starter = [] {
        PayTerms terms;
        terms.id = Id<PayTerms>(1);
        return terms;
    }();
    const PayTerms* terms = jobs.of<PayTerms>().find(starter.id);
    return terms ? *terms : starter;
}

std::vector<WorkBid> Book::soldBid(Id<Plan> work) const {
    std::vector<WorkBid> bids;
    for (const auto& [id, sold] : jobs.of<SoldWork>()) {
        if (sold.plan == work)
            bids.push_back(workBid(sold));
    }
    return bids;
}

} // namespace miterbook
