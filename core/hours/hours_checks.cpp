// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/hours_checks.h"

#include "basics/number_text.h"
#include "basics/quote.h"

namespace miterbook {

Result<void> checkTimer(const Timer& timer) {
    if (!timer.person)
        return badInput("A timer runs for somebody of the crew.");
    if (!timer.day.ok())
        return badInput("The timer does not say on which day it was started.");
    if (timer.seconds < 0)
        return badInput("A timer cannot have run for less than no time.");
    if (!timer.running())
        return {};
    if (auto moment = parseMoment(timer.started); !moment)
        return moment.error();
    return {};
}

Result<void> checkApproval(const WeekApproval& approval) {
    if (!approval.week.ok() || !approval.approved.ok())
        return badInput("An approved week has a first day, and a day on which it was approved.");
    if (!approval.person)
        return badInput("A week is approved for somebody of the crew.");
    return {};
}

Result<void> checkPayTerms(const PayTerms& terms) {
    if (terms.overtimeAfter < Hours() || terms.overtimeAfter > Hours::whole(168))
        return badInput("Overtime begins after 0 to 168 hours a week.");
    if (terms.overtimeFactor < Percent::hundred() || terms.overtimeFactor > Percent::whole(500))
        return badInput("Overtime is paid at 100 to 500 % of the straight rate.");
    return {};
}

Result<void> checkCrewPay(const CrewPay& pay) {
    return pay.person ? Result<void>() : badInput("A basis of pay is for somebody of the crew.");
}

Result<void> checkPieceRate(const PieceRate& rate) {
    if (rate.pay < UnitPrice())
        return badInput("A piece rate cannot be below zero.");
    if (rate.task != Task::other && pieceOfWork(rate.task) != rate.work) {
        return badInput(
            capitalised(word(rate.task)) + " is no task of " + std::string(word(rate.work)) + ".");
    }
    return {};
}

Result<void> checkSoldWork(const SoldWork& sold) {
    if (sold.hours < Hours() || sold.units < Quantity())
        return badInput("A bid counts neither hours nor units below zero.");
    return {};
}

Result<void> checkSoldTask(const SoldTask& sold) {
    if (sold.hours < Hours() || sold.quantity < Quantity() || sold.factor <= Percent())
        return badInput("A bid counts neither hours nor quantities below zero.");
    return {};
}

Result<void> checkWorkDone(const WorkDone& said) {
    if (said.done < Percent() || said.done > Percent::hundred()) {
        return badInput(capitalised(word(said.work)) + " can be from 0 to 100 % done, not "
            + formatPercent(said.done) + " %.");
    }
    if (said.work == PieceOfWork::extras)
        return badInput("Each extra is done or not; say so where it is billed.");
    return {};
}

} // namespace miterbook
