// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "hours/approval.h"
#include "hours/pay_terms.h"
#include "hours/sold_bid.h"
#include "hours/timer.h"
#include "hours/work_done.h"

namespace miterbook {

// Whether one row of the time book can stand as it is; the Error is one sentence for the user.

Result<void> checkTimer(const Timer& timer);
Result<void> checkApproval(const WeekApproval& approval);
Result<void> checkPayTerms(const PayTerms& terms);
Result<void> checkCrewPay(const CrewPay& pay);
Result<void> checkPieceRate(const PieceRate& rate);
Result<void> checkSoldWork(const SoldWork& sold);
Result<void> checkSoldTask(const SoldTask& sold);
Result<void> checkWorkDone(const WorkDone& said);

} // namespace miterbook
