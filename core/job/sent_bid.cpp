// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/sent_bid.h"

namespace miterbook {

Result<void> checkSentBid(const SentBid& bid) {
    if (bid.number < 1 || bid.revision < 1 || !bid.date.ok())
        return badInput("A bid is sent with a number, a revision and a date.");
    Money sum;
    for (const SentPrice& price : bid.prices)
        sum += price.price;
    if (sum != bid.amount)
        return badInput("The prices of bid " + bidName(bid) + " do not add up to its amount.");
    if (bid.answer != BidAnswer::open && !bid.answered.ok())
        return badInput("Say on which day bid " + bidName(bid) + " was answered.");
    return {};
}

std::string bidName(const SentBid& bid) {
    const std::string number = std::to_string(bid.number);
    return bid.revision == 1 ? number : number + ", revision " + std::to_string(bid.revision);
}

} // namespace miterbook
