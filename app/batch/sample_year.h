// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/opened_book.h"

#include <cstdint>

namespace miterbook {

/// What the sample year is made from.
struct SampleYear {
    Date today = noDate;         ///< houses are finished over the twelve months before it
    std::uint32_t seed = 20'260; ///< the same seed and day give the same book
    int finished = 14;           ///< houses that are finished; two more are underway
};

/// Gives a book a year of a shop's life: houses over its builders' plans in turn, won, worked and
/// finished, with the hours of its crew; the last two are underway, with hours to yesterday. All of
/// it is invented. Each piece of work of a plan has a true pace of its own, drawn once about the
/// book's, and each house scatters about it by a sixth, so that Review has something true to find:
///
/// - the paces are exp(N(0, 0.12)) of the book's, on the second plan's stairs and crown 1.5 of it;
/// - one entry in forty names its task; doors, windows and base say what was finished;
/// - a house takes travel each day, punch at the end, waiting one time in five, and is called back
///   to one time in four.
///
/// - every house has a contract at its bid's prices. Builders are billed in turn by piece of work
///   (10 % retained, a waiver with each payment), by stage, and on completion (5 % retained);
/// - extras and backcharges are as sample_extras.h says; the fourth house pays a deposit, the last
///   draw of the fifth is voided and issued again;
/// - payments come by the builders' habits: in time, late, one in four in two parts, one too large;
///   the third builder has not paid for 150 days. Retainage is asked for a month after the end, and
///   a house that has brought all it can is paid. What the houses underway have done since their
///   last draw is said and not yet billed;
/// - houses underway have dates around the day, one of which clashes with a callback.
///
/// Edits go through the book like any other and are those of the screens: one for each house and
/// its bid, one for its hours, then the money of all houses by day, so that invoices are numbered
/// as they were issued.
/// Errors: a book without a plan or without a crew.
Result<void> addSampleYear(OpenedBook& opened, const SampleYear& year);

} // namespace miterbook
