// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/extra.h"

#include "basics/blank.h"
#include "basics/quote.h"

#include <initializer_list>

namespace miterbook {

namespace {

/// Takes the step when the extra stands at one of `from`.
Result<Extra> step(Extra extra, std::initializer_list<ExtraState> from, ExtraState to) {
    for (const ExtraState state : from) {
        if (extra.state == state) {
            extra.state = to;
            return extra;
        }
    }
    return badInput("The extra " + inQuotes(extra.title) + " is " + std::string(word(extra.state))
        + " and cannot become " + std::string(word(to)) + ".");
}

} // namespace

bool isAgreed(const Extra& extra) {
    return extra.state == ExtraState::approved || extra.state == ExtraState::done
        || extra.state == ExtraState::billed;
}

bool lacksApproval(const Extra& extra) {
    return extra.state == ExtraState::asked || extra.state == ExtraState::priced;
}

Result<Extra> pricedExtra(Extra extra, Money price) {
    extra.price = price;
    return step(std::move(extra), {ExtraState::asked, ExtraState::priced}, ExtraState::priced);
}

Result<Extra> approvedExtra(Extra extra, const std::string& by, Date on) {
    if (isBlank(by))
        return badInput("Say who approved the extra " + inQuotes(extra.title) + ".");
    if (!on.ok())
        return badInput("Say when the extra " + inQuotes(extra.title) + " was approved.");
    extra.approvedBy = by;
    extra.approved = on;
    return step(std::move(extra), {ExtraState::priced}, ExtraState::approved);
}

Result<Extra> doneExtra(Extra extra, Date on) {
    extra.done = on;
    return step(std::move(extra), {ExtraState::approved}, ExtraState::done);
}

Result<Extra> billedExtra(Extra extra) {
    return step(std::move(extra), {ExtraState::done}, ExtraState::billed);
}

Result<Extra> unbilledExtra(Extra extra) {
    return step(std::move(extra), {ExtraState::billed}, ExtraState::done);
}

Result<Extra> droppedExtra(Extra extra) {
    return step(std::move(extra), {ExtraState::asked, ExtraState::priced, ExtraState::approved},
        ExtraState::dropped);
}

} // namespace miterbook
