// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/send_bid.h"

#include "papers/bid_paper.h"
#include "papers/freeze.h"

namespace miterbook {

namespace {

/// The head of the bid as it goes out, without its paper.
SentBid headOf(const PaperJob& job, const JobFigures& figures) {
    SentBid bid;
    bid.job = job.plan;
    const Plan* plan = job.book.plan(job.plan);
    if (const Builder* builder = plan ? job.book.builderOf(*plan) : nullptr)
        bid.builder = builder->id;
    bid.elevation = job.selection.elevation;
    bid.options = job.selection.options;
    const BidNumber number = nextBidNumber(job.book, job.plan, job.selection);
    bid.number = number.number;
    bid.revision = number.revision;
    bid.date = job.date;
    bid.validUntil = validUntil(job);
    const WorkTotal& total = figures.estimate.total;
    bid.amount = total.price;
    bid.cost = total.cost();
    bid.hours = total.hours;
    for (const WorkTotal& work : figures.estimate.works)
        bid.prices.push_back({work.work, work.price});
    return bid;
}

/// The revision that this one follows; nothing for a first one.
std::optional<SentBid> revisionBefore(const Book& book, const SentBid& bid) {
    for (const SentBid& each : sentBidsOf(book, bid.job)) {
        if (each.number == bid.number && each.revision == bid.revision - 1)
            return each;
    }
    return std::nullopt;
}

BidHeading headingOf(const Book& book, const SentBid& bid) {
    BidHeading heading;
    heading.number = bid.number;
    heading.revision = bid.revision;
    if (const auto before = revisionBefore(book, bid))
        heading.inPlaceOf = before->date;
    return heading;
}

Result<void> checkPriced(const PaperJob& job, const JobFigures& figures) {
    if (!job.date.ok())
        return badInput("Say on which day the bid is sent.");
    if (figures.estimate.works.empty() || figures.estimate.total.price <= Money())
        return badInput("Nothing is priced yet: there is no bid to send.");
    return {};
}

} // namespace

Result<Edit> sendBid(const PaperJob& job, const JobFigures& figures, IdSource& ids) {
    return sendBid(
        job, figures, alternatesFor(job.book, job.plan, job.selection, figures, job.stop), ids);
}

Result<Edit> sendBid(const PaperJob& job, const JobFigures& figures,
    const std::vector<Alternate>& alternates, IdSource& ids) {
    if (auto priced = checkPriced(job, figures); !priced)
        return priced.error();
    SentBid bid = headOf(job, figures);
    IssuedPaper row;
    row.id = ids.next<IssuedPaper>();
    row.plan = job.plan;
    row.kind = IssuedKind::bid;
    row.number = bid.number;
    row.revision = bid.revision;
    row.date = bid.date;
    row.amount = bid.amount;
    const auto paper = issuedPaper(
        std::move(row), bidPaper(job, figures, headingOf(job.book, bid), alternates));
    if (!paper)
        return paper.error();
    bid.id = ids.next<SentBid>();
    bid.paper = paper->id;
    const House* house = job.book.house(job.house);
    const Plan* plan = job.book.plan(job.plan);
    EditBuilder edit(job.book,
        "Send bid " + bidName(bid) + " on "
            + (house       ? house->name
                    : plan ? plan->name
                           : std::string("a plan")));
    edit.put(*paper);
    edit.put(std::move(bid));
    return edit.take();
}

Result<Paper> sentBidPaper(const Book& book, const SentBid& bid) {
    const IssuedPaper* issued = book.sheet(bid.job).of<IssuedPaper>().find(bid.paper);
    if (!issued)
        return Error{Fault::notFound, "The paper of bid " + bidName(bid) + " is not in the book."};
    return paperAsIssued(*issued, book.prices);
}

} // namespace miterbook
