// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/billing_setup.h"
#include "bill/billing_terms.h"
#include "bill/extra_price.h"
#include "bill/reminder.h"

namespace miterbook {

// Whether one row makes sense by itself; the Error is one sentence for the user.

Result<void> checkBillingSetup(const BillingSetup& setup);
Result<void> checkBillingTerms(const BillingTerms& terms);
Result<void> checkContract(const Contract& contract);
Result<void> checkExtra(const Extra& extra);
Result<void> checkExtraLine(const ExtraLine& line);
Result<void> checkBackcharge(const Backcharge& backcharge);
Result<void> checkPayment(const Payment& payment);
Result<void> checkReminder(const Reminder& reminder);

} // namespace miterbook
