// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"
#include "job/edit.h"

#include <vector>

namespace miterbook {

/// How a sent bid stands: as the builder answered, unless a later revision was sent.
enum class BidStanding { open, accepted, lost, superseded };

template <>
struct Words<BidStanding> {
    static constexpr std::array list{Word{BidStanding::open, "open"},
        Word{BidStanding::accepted, "accepted"}, Word{BidStanding::lost, "lost"},
        Word{BidStanding::superseded, "superseded"}};
};

BidStanding standingOf(const Book& book, const SentBid& bid);

/// The bids that were sent on a plan or house, the latest first.
std::vector<SentBid> sentBidsOf(const Book& book, Id<Plan> job);

/// What the next bid on a job is called.
struct BidNumber {
    int number = 1;
    int revision = 1;

    bool operator==(const BidNumber&) const = default;
};

/// A bid on the same plan, elevation and options is the next revision of the one sent before; else
/// it has the next number of the book.
BidNumber nextBidNumber(const Book& book, Id<Plan> job, const Selection& selection);

/// An estimate with the prices that were sent: cost and hours stay as they are reckoned today, and
/// profit is what the sent price leaves. Works that the estimate no longer has come with their
/// price.
Estimate asSent(Estimate estimate, const SentBid& bid);

/// The builder's answer. A house that is being bid is won with an accepted bid, at the prices that
/// were sent and with the hours of `estimate`, its figures of today. Errors: superseded, no day.
Result<Edit> answerBid(const Book& book, IdSource& ids, SentBid answered, const Estimate& estimate);

/// What came of the bids to one builder; each number counts once, by its last revision.
struct BuilderBids {
    Id<Builder> builder; ///< none: bids on plans without a builder
    int won = 0;
    int lost = 0;
    int open = 0;
    Money wonAmount;
    Money lostAmount;
    Money openAmount;

    /// Won of those answered; nothing where none is.
    std::optional<Percent> winRate() const;
    bool operator==(const BuilderBids&) const = default;
};

/// By builder, in the order of ids.
std::vector<BuilderBids> bidsByBuilder(const Book& book);

/// Puts one job's settings for bidding on another; prices and plans stay each job's own. Errors:
/// both are the same, or `from` goes by the shop's terms and so does `to`.
Result<Edit> copyBidSettings(const Book& book, IdSource& ids, Id<Plan> from, Id<Plan> to);

/// What was sent stays: an edit adds a sent bid together with its frozen paper, with the number and
/// revision that come next, and changes nothing of it later but the builder's answer.
Result<void> checkSentBids(const Book& book, const Edit& edit);

} // namespace miterbook
