// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/workbook.h"
#include "papers/issue.h"

namespace miterbook {

inline constexpr Id<House> lot7{60};
inline constexpr Id<Plan> lot7Plan{61};
inline constexpr Id<Builder> harrow{10};
inline constexpr Id<Contract> lot7Contract{62};
inline constexpr Id<Extra> windowSeat{63};
inline constexpr Id<Backcharge> scratchedDoor{64};

/// The small book with house "Lot 7" of Harrow Homes won: doors 4,000, windows 3,500, base 2,500,
/// 10 % retained, 8 % tax, 30 days. An extra of 480 is approved and done, a backcharge of 85 is
/// accepted.
Book billedHouse();

/// A day of March 2026 and after: 1 is 2026-03-01.
Date marchDay(int number);

/// A draw of the works said, with what else is asked for.
Result<Bill> drawOf(const Book& book, Date date,
    const std::vector<std::pair<PieceOfWork, int>>& percents, bool withExtra = false,
    std::vector<Backcharge> backcharges = {});

/// Issues a bill, or says why not.
Result<void> issue(Workbook& workbook, const Result<Bill>& bill);

/// The id of an invoice by its number; none where there is no such.
Id<Invoice> invoiceNumbered(const Book& book, int number);

} // namespace miterbook
