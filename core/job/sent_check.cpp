// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/sent_bids.h"

#include <algorithm>

namespace miterbook {

namespace {

/// The bid with no answer: what was sent.
SentBid asItWasSent(SentBid bid) {
    bid.answer = BidAnswer::open;
    bid.answered = noDate;
    bid.note.clear();
    return bid;
}

Error stays(const SentBid& bid) {
    return {Fault::conflict,
        "Bid " + bidName(bid) + " has been sent and stays as it is: send a revision."};
}

bool hasPaper(const Edit& edit, const SentBid& bid) {
    return std::ranges::any_of(edit.changes, [&](const Change& change) {
        const auto* paper = rowIn<IssuedPaper>(change.after);
        return paper && paper->id == bid.paper && paper->kind == IssuedKind::bid
            && paper->number == bid.number && paper->revision == bid.revision
            && paper->plan == bid.job && paper->amount == bid.amount && paper->date == bid.date;
    });
}

Result<void> checkNew(const Book& book, const Edit& edit, const SentBid& bid) {
    const BidNumber next = nextBidNumber(book, bid.job, {bid.elevation, bid.options});
    if (BidNumber{bid.number, bid.revision} != next) {
        SentBid wanted = bid;
        wanted.number = next.number;
        wanted.revision = next.revision;
        return Error{Fault::conflict,
            "The next bid on this is number " + bidName(wanted) + ", not " + bidName(bid) + "."};
    }
    if (!hasPaper(edit, bid))
        return badInput("A bid is sent together with its paper.");
    return {};
}

} // namespace

Result<void> checkSentBids(const Book& book, const Edit& edit) {
    for (const Change& change : edit.changes) {
        const auto* before = rowIn<SentBid>(change.before);
        const auto* after = rowIn<SentBid>(change.after);
        if (before && (!after || asItWasSent(*before) != asItWasSent(*after)))
            return stays(*before);
        if (!before && after) {
            if (auto checked = checkNew(book, edit, *after); !checked)
                return checked;
        }
    }
    return {};
}

} // namespace miterbook
