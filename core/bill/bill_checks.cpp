// SPDX-License-Identifier: GPL-3.0-or-later
#include "bill/bill_checks.h"

#include "basics/blank.h"
#include "basics/number_text.h"
#include "basics/quote.h"

#include <set>

namespace miterbook {

namespace {

constexpr Money mostMoney = Money::dollars(100'000'000); // as parseMoney refuses more
constexpr int mostDays = 3660;

bool isShare(Percent percent) {
    return percent >= Percent() && percent <= Percent::hundred();
}

bool isAmount(Money money) {
    return money >= -mostMoney && money <= mostMoney;
}

Result<void> checkStages(const std::vector<ContractStage>& stages) {
    Percent sum;
    for (const ContractStage& stage : stages) {
        if (isBlank(stage.name))
            return badInput("A stage at which a house is billed needs a name.");
        if (!isShare(stage.share)) {
            return badInput("The stage " + inQuotes(stage.name) + " brings "
                + formatPercent(stage.share) + " %; a share is from 0 to 100 %.");
        }
        sum = sum + stage.share;
    }
    if (sum > Percent::hundred()) {
        return badInput("The stages add up to " + formatPercent(sum)
            + " %; together they bring no more than 100 %.");
    }
    return {};
}

Result<void> checkTerms(Percent retainage, Percent tax, int dueDays) {
    if (!isShare(retainage))
        return badInput("Retainage is from 0 to 100 %.");
    if (!isShare(tax))
        return badInput("Sales tax is from 0 to 100 %.");
    if (dueDays < 0 || dueDays > mostDays)
        return badInput("An invoice falls due from 0 to 3,660 days after its date.");
    return {};
}

} // namespace

Result<void> checkBillingSetup(const BillingSetup& setup) {
    constexpr std::size_t longestPrefix = 20;
    if (setup.prefix.size() > longestPrefix)
        return badInput("What stands before an invoice's number is at most 20 letters.");
    if (setup.firstNumber < 1 || setup.firstNumber > 100'000'000)
        return badInput("The first invoice is number 1 or above.");
    if (setup.lateDays < 0 || setup.lateDays > mostDays)
        return badInput("An invoice is late from 0 to 3,660 days after it fell due.");
    if (setup.remindDays < 0 || setup.remindDays > mostDays)
        return badInput("Reminders are shown from 0 to 3,660 days ahead.");
    return {};
}

Result<void> checkBillingTerms(const BillingTerms& terms) {
    if (auto plain = checkTerms(terms.retainage, terms.tax, terms.dueDays); !plain)
        return plain;
    return checkStages(terms.stages);
}

Result<void> checkContract(const Contract& contract) {
    std::set<PieceOfWork> works;
    for (const ContractValue& value : contract.values) {
        const std::string name = capitalised(word(value.work));
        if (!works.insert(value.work).second)
            return badInput(name + " stands twice in the contract.");
        if (value.price < Money() || value.price > mostMoney)
            return badInput("The price of " + name + " is from nothing to 100 million.");
        if (!isShare(value.done))
            return badInput(name + " cannot be " + formatPercent(value.done) + " % done.");
    }
    if (auto plain = checkTerms(contract.retainage, contract.tax, contract.dueDays); !plain)
        return plain;
    return checkStages(contract.stages);
}

Result<void> checkExtra(const Extra& extra) {
    if (isBlank(extra.title))
        return badInput("Say in a few words what the extra is.");
    if (!isAmount(extra.price))
        return badInput("The price of an extra is up to 100 million.");
    if (!isAmount(extra.material))
        return badInput("The material of an extra is up to 100 million.");
    if (isAgreed(extra) && (isBlank(extra.approvedBy) || !extra.approved.ok()))
        return badInput("Say who approved the extra " + inQuotes(extra.title) + ", and when.");
    return {};
}

Result<void> checkExtraLine(const ExtraLine& line) {
    if (line.quantity < Quantity() || line.quantity > Quantity::count(1'000'000))
        return badInput("A quantity of an extra is from nothing to a million.");
    if (!isAmount(line.material))
        return badInput("The material of an extra is up to 100 million.");
    return {};
}

Result<void> checkBackcharge(const Backcharge& backcharge) {
    if (backcharge.amount < Money() || backcharge.amount > mostMoney)
        return badInput("A backcharge is from nothing to 100 million.");
    if (backcharge.state != BackchargeState::accepted)
        return {}; // still being typed, or talked about
    if (isBlank(backcharge.reason))
        return badInput("Say what the backcharge is for before it is accepted.");
    if (backcharge.amount == Money())
        return badInput("Say how much the backcharge is before it is accepted.");
    return {};
}

Result<void> checkPayment(const Payment& payment) {
    if (payment.amount <= Money() || payment.amount > mostMoney)
        return badInput("A payment is more than nothing and up to 100 million.");
    if (!payment.date.ok())
        return badInput("Say on which day the payment came in.");
    if (!payment.builder)
        return badInput("Say which builder paid.");
    return {};
}

Result<void> checkReminder(const Reminder& reminder) {
    if (isBlank(reminder.title))
        return badInput("Say what to be reminded of.");
    if (!reminder.due.ok())
        return badInput("Say for which day " + inQuotes(reminder.title) + " is.");
    return {};
}

} // namespace miterbook
