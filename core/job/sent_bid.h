// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/hours.h"
#include "basics/result.h"
#include "book/builder.h"
#include "book/piece_of_work.h"
#include "job/issued_paper.h"
#include "plan/plan.h"

#include <string>
#include <vector>

namespace miterbook {

/// What a builder said to a bid.
enum class BidAnswer { open, accepted, lost };

template <>
struct Words<BidAnswer> {
    static constexpr std::array list{Word{BidAnswer::open, "open"},
        Word{BidAnswer::accepted, "accepted"}, Word{BidAnswer::lost, "lost"}};
};

/// The price of one piece of work as it was sent.
struct SentPrice {
    PieceOfWork work = PieceOfWork::doors;
    Money price;

    bool operator==(const SentPrice&) const = default;
};

template <>
struct Describe<SentPrice> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "price of a sent bid";
    static constexpr void allFields(auto&& take) {
        take(field("work", &SentPrice::work), field("price", &SentPrice::price));
    }
};

/// A bid that was sent: the head of its frozen paper. Only the builder's answer changes. A bid with
/// a later revision is superseded; nothing says so but that revision.
struct SentBid {
    Id<SentBid> id;
    Id<Plan> job; ///< a builder's plan, or a house's own; not `plan`: it is never copied to a house
    Id<Builder> builder;
    Id<IssuedPaper> paper;
    int number = 0;
    int revision = 1;
    Date date = noDate;
    Date validUntil = noDate;
    Id<Variant> elevation; ///< of a builder's plan
    std::vector<Id<Variant>> options;
    Money amount;
    Money cost;  ///< as reckoned on the day; for the shop alone
    Hours hours; ///< likewise
    std::vector<SentPrice> prices;
    BidAnswer answer = BidAnswer::open;
    Date answered = noDate;
    std::string note; ///< the builder's reason, who got it, at what price

    bool operator==(const SentBid&) const = default;
};

template <>
struct Describe<SentBid> {
    static constexpr std::string_view table = "sent_bid";
    static constexpr std::string_view noun = "sent bid";
    static constexpr void allFields(auto&& take) {
        take(field("id", &SentBid::id), field("job", &SentBid::job),
            field("builder", &SentBid::builder), field("paper", &SentBid::paper),
            field("number", &SentBid::number), field("revision", &SentBid::revision),
            field("date", &SentBid::date), field("valid_until", &SentBid::validUntil),
            field("elevation", &SentBid::elevation), field("options", &SentBid::options),
            field("amount", &SentBid::amount), field("cost", &SentBid::cost),
            field("hours", &SentBid::hours), field("prices", &SentBid::prices),
            field("answer", &SentBid::answer), field("answered", &SentBid::answered),
            field("note", &SentBid::note));
    }
};

/// Whether a sent bid makes sense by itself.
Result<void> checkSentBid(const SentBid& bid);

/// "12", "12, revision 2".
std::string bidName(const SentBid& bid);

} // namespace miterbook
