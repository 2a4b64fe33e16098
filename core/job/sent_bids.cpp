// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/sent_bids.h"

#include "job/house_stage.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace miterbook {

namespace {

const Table<SentBid>& allSent(const Book& book) {
    return book.jobs.of<SentBid>();
}

std::vector<Id<Variant>> sorted(std::vector<Id<Variant>> options) {
    std::ranges::sort(options);
    return options;
}

/// The last revision of each number.
std::map<int, const SentBid*> lastRevisions(const Book& book) {
    std::map<int, const SentBid*> last;
    for (const auto& [id, bid] : allSent(book)) {
        const SentBid*& held = last[bid.number];
        if (!held || held->revision < bid.revision)
            held = &bid;
    }
    return last;
}

std::string jobName(const Book& book, Id<Plan> job) {
    const Plan* plan = book.plan(job);
    const House* house = plan ? book.house(plan->house) : nullptr;
    if (house)
        return house->name;
    return plan ? plan->name : std::string("that plan");
}

const House* houseOf(const Book& book, Id<Plan> job) {
    const Plan* plan = book.plan(job);
    return plan ? book.house(plan->house) : nullptr;
}

} // namespace

BidStanding standingOf(const Book& book, const SentBid& bid) {
    const bool followed = std::ranges::any_of(allSent(book), [&](const auto& entry) {
        return entry.second.number == bid.number && entry.second.revision > bid.revision;
    });
    if (followed)
        return BidStanding::superseded;
    switch (bid.answer) {
    case BidAnswer::accepted:
        return BidStanding::accepted;
    case BidAnswer::lost:
        return BidStanding::lost;
    case BidAnswer::open:
        break;
    }
    return BidStanding::open;
}

std::vector<SentBid> sentBidsOf(const Book& book, Id<Plan> job) {
    std::vector<SentBid> bids;
    for (const auto& [id, bid] : allSent(book)) {
        if (bid.job == job)
            bids.push_back(bid);
    }
    std::ranges::sort(bids, std::ranges::greater(),
        [](const SentBid& bid) { return std::tuple(bid.number, bid.revision); });
    return bids;
}

BidNumber nextBidNumber(const Book& book, Id<Plan> job, const Selection& selection) {
    BidNumber next;
    const SentBid* before = nullptr;
    const auto options = sorted(selection.options);
    for (const auto& [id, bid] : allSent(book)) {
        next.number = std::max(next.number, bid.number + 1);
        const bool same = bid.job == job && bid.elevation == selection.elevation
            && sorted(bid.options) == options;
        if (same && (!before || before->revision < bid.revision))
            before = &bid;
    }
    return before ? BidNumber{before->number, before->revision + 1} : next;
}

Estimate asSent(Estimate estimate, const SentBid& bid) {
    for (WorkTotal& work : estimate.works) {
        work.price = Money();
        work.profit = -work.cost();
    }
    for (const SentPrice& sent : bid.prices) {
        auto work = std::ranges::find(estimate.works, sent.work, &WorkTotal::work);
        if (work == estimate.works.end()) {
            WorkTotal priced;
            priced.work = sent.work;
            estimate.works.push_back(priced);
            work = std::prev(estimate.works.end());
        }
        work->price += sent.price;
        work->profit += sent.price;
    }
    std::ranges::stable_sort(estimate.works, {}, &WorkTotal::work);
    const Money cost = estimate.total.cost();
    estimate.total.price = bid.amount;
    estimate.total.profit = bid.amount - cost;
    estimate.markup = markupOf(cost, bid.amount);
    estimate.margin = marginOf(cost, bid.amount);
    return estimate;
}

Result<Edit> answerBid(
    const Book& book, IdSource& ids, SentBid answered, const Estimate& estimate) {
    if (standingOf(book, answered) == BidStanding::superseded) {
        return Error{Fault::conflict,
            "Bid " + bidName(answered)
                + " is superseded: the answer belongs to its last revision."};
    }
    if (answered.answer == BidAnswer::open)
        answered.answered = noDate;
    EditBuilder edit(book,
        "Bid " + bidName(answered) + " on " + jobName(book, answered.job) + ": "
            + std::string(word(answered.answer)));
    const House* house = houseOf(book, answered.job);
    if (answered.answer == BidAnswer::accepted && house && house->stage == HouseStage::bidding) {
        House won = *house;
        won.stage = HouseStage::won;
        const Estimate sold = asSent(estimate, answered);
        putHouseStage(edit, book, ids, won, answered.answered, &sold);
    }
    edit.put(std::move(answered));
    return edit.take();
}

std::optional<Percent> BuilderBids::winRate() const {
    if (won + lost == 0)
        return std::nullopt;
    return Percent::basisPoints(roundedQuotient(Wide(won) * 10'000, won + lost));
}

std::vector<BuilderBids> bidsByBuilder(const Book& book) {
    std::map<Id<Builder>, BuilderBids> byBuilder;
    for (const auto& [number, bid] : lastRevisions(book)) {
        BuilderBids& bids = byBuilder[bid->builder];
        bids.builder = bid->builder;
        const auto count = [&](int& how, Money& much) {
            ++how;
            much += bid->amount;
        };
        if (bid->answer == BidAnswer::accepted)
            count(bids.won, bids.wonAmount);
        else if (bid->answer == BidAnswer::lost)
            count(bids.lost, bids.lostAmount);
        else
            count(bids.open, bids.openAmount);
    }
    std::vector<BuilderBids> all;
    for (const auto& [id, bids] : byBuilder)
        all.push_back(bids);
    return all;
}

Result<Edit> copyBidSettings(const Book& book, IdSource& ids, Id<Plan> from, Id<Plan> to) {
    if (from == to)
        return badInput("Choose another plan or house to copy the settings to.");
    if (!book.plan(from) || !book.plan(to))
        return Error{Fault::notFound, "That plan is not in the book any more."};
    EditBuilder edit(
        book, "Copy the bid settings of " + jobName(book, from) + " to " + jobName(book, to));
    const BidSetup* held = book.bidSetup(from);
    const BidSetup* there = book.bidSetup(to);
    BidSetup setup = held ? *held : setupFrom(book.prices.terms(), to);
    setup.id = there ? there->id : ids.next<BidSetup>();
    setup.plan = to;
    edit.put(std::move(setup));
    Edit made = edit.take();
    if (made.empty())
        return badInput(jobName(book, to) + " has these settings already.");
    return made;
}

} // namespace miterbook
