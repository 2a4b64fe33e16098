// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"
#include "bill/take_back.h"
#include "job/bills.h"
#include "job/edit.h"

namespace miterbook {

// The gestures of billing but for issuing, which needs the paper (papers/issue.h). Errors: one
// sentence; the book is as it was.

/// How a builder is billed: its own terms, else the shop's, else starter values.
BillingTerms termsFor(const Book& book, Id<Builder> builder);

/// A contract with the terms of the house's builder, not in the book yet.
Contract contractFor(const Book& book, const House& house, std::vector<ContractValue> values);

/// Puts a contract; its house is won with it, and the estimate kept as its bid, where it was being
/// bid on. The house's own plan must be open.
Edit agreeContract(const Book& book, IdSource& ids, const Contract& contract, Date today,
    const Estimate& estimate);
/// The contract's terms become the builder's own (the shop's where it names none).
Edit keepTerms(const Book& book, IdSource& ids, const Contract& contract, bool waiver);

/// A new extra with the lines it is priced by; with lines and no price the book's rates price it.
Result<Edit> addExtra(const Book& book, IdSource& ids, Extra extra, std::vector<ExtraLine> lines);

/// Money that came in, spread over the builder's open invoices, oldest first; where the builder
/// wants waivers, with a reminder of the one that is due.
Result<Edit> recordPayment(const Book& book, IdSource& ids, Payment payment);
/// A payment and what it was spread over go; a payment entered by mistake.
Edit removePayment(const Book& book, Id<Payment> payment);
/// Spreads what is left of a payment.
Edit spreadRest(const Book& book, IdSource& ids, const Payment& payment);

/// The invoice counts no more; extras on it are done and to be billed again.
Result<Edit> voidInvoice(
    const Book& book, IdSource& ids, Id<Invoice> invoice, Date date, const std::string& reason);

} // namespace miterbook
