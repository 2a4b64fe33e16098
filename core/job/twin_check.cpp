// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/twin_check.h"

#include "basics/blank.h"
#include "basics/letters.h"
#include "basics/quote.h"
#include "job/rows_after.h"

#include <optional>
#include <tuple>

namespace miterbook {

namespace {

std::string nameOf(const Book& book, Id<CrewMember> id) {
    const CrewMember* member = book.prices.of<CrewMember>().find(id);
    return member ? member->name : std::string("whoever has no rate of their own");
}

// What may be in the book once, nothing where it does not matter; and the sentence for the second.

std::optional<Id<CrewMember>> onceOf(const Book&, const CrewPay& pay) {
    return pay.person ? std::optional(pay.person) : std::nullopt;
}

std::string twinSentence(const Book& book, const CrewPay& pay) {
    return "The book says already how " + nameOf(book, pay.person)
        + " is paid; change that line instead.";
}

std::optional<std::tuple<Id<CrewMember>, PieceOfWork, Task>> onceOf(
    const Book&, const PieceRate& rate) {
    return std::tuple(rate.person, rate.work, rate.task);
}

std::string twinSentence(const Book& book, const PieceRate& rate) {
    const auto what = rate.task == Task::other ? word(rate.work) : word(rate.task);
    return "There is a piece rate of " + nameOf(book, rate.person) + " for " + std::string(what)
        + " already; change that one instead.";
}

std::optional<std::pair<Id<House>, PieceOfWork>> onceOf(const Book&, const WorkDone& said) {
    return std::pair(said.house, said.work);
}

std::string twinSentence(const Book&, const WorkDone& said) {
    return "How much of " + std::string(word(said.work))
        + " is done has been said already; change that instead.";
}

/// Houses of no plan set have nothing to be mixed up with.
std::optional<std::pair<Id<PlanSet>, std::string>> onceOf(const Book& book, const House& house) {
    const Plan* plan = book.plan(house.plan);
    if (!plan || !plan->set)
        return std::nullopt;
    return std::pair(plan->set, lowered(trimmed(house.name)));
}

std::string twinSentence(const Book& book, const House& house) {
    const Plan* plan = book.plan(house.plan);
    const PlanSet* set = plan ? book.jobs.of<PlanSet>().find(plan->set) : nullptr;
    return "There is a house " + inQuotes(house.name) + " on the plans of "
        + (set ? set->name : std::string("this builder")) + " already; give this one another name.";
}

template <class Row>
Result<void> checkTwinsOf(const Book& book, const Edit& edit) {
    if (!touches<Row>(edit.changes))
        return {};
    const Table<Row> table = tableAfter<Row>(book, edit);
    for (const Change& change : edit.changes) {
        const Row* after = rowIn<Row>(change.after);
        const auto once = after ? onceOf(book, *after) : std::nullopt;
        const Row* before = rowIn<Row>(change.before);
        if (!once || (before && onceOf(book, *before) == once))
            continue;
        for (const auto& [id, other] : table) {
            if (id != after->id && onceOf(book, other) == once)
                return badInput(twinSentence(book, *after));
        }
    }
    return {};
}

} // namespace

Result<void> checkTwins(const Book& book, const Edit& edit) {
    if (auto pay = checkTwinsOf<CrewPay>(book, edit); !pay)
        return pay;
    if (auto rate = checkTwinsOf<PieceRate>(book, edit); !rate)
        return rate;
    if (auto said = checkTwinsOf<WorkDone>(book, edit); !said)
        return said;
    return checkTwinsOf<House>(book, edit);
}

} // namespace miterbook
