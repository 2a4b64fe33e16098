// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/words.h"
#include "bill/payment.h"

#include <array>

namespace miterbook {

/// From which day the age of an open invoice counts.
enum class AgeFrom { invoiceDate, dueDate };

template <>
struct Words<AgeFrom> {
    static constexpr std::array list{
        Word{AgeFrom::invoiceDate, "date of the invoice"}, Word{AgeFrom::dueDate, "due date"}};
};

/// The usual four: 0-30, 31-60, 61-90 and over 90 days; what is not due yet is in the first.
inline constexpr std::size_t agingBuckets = 4;

/// Which bucket an age in days falls into.
std::size_t agingBucket(int days);

/// What one builder owes, by age. Retainage that is held is not owed yet and not in it.
struct AgingLine {
    Id<Builder> builder;
    std::array<Money, agingBuckets> buckets;
    Money credit;       ///< paid or credited beyond what was asked for; positive
    Money owed() const; ///< sum of the buckets - credit

    bool operator==(const AgingLine&) const = default;
};

/// Builders that owe or have something left, by builder.
std::vector<AgingLine> aging(const std::vector<Bill>& bills, const std::vector<Payment>& payments,
    const std::vector<Allocation>& allocations, Date today, AgeFrom from);

/// The column sums.
AgingLine agingTotal(const std::vector<AgingLine>& lines);

/// An invoice that is past its due date.
struct LateBill {
    OpenBill bill;
    int daysLate = 0;

    bool operator==(const LateBill&) const = default;
};

/// At least `atLeast` days late, latest first.
std::vector<LateBill> lateBills(const std::vector<Bill>& bills,
    const std::vector<Allocation>& allocations, Date today, int atLeast = 1);

} // namespace miterbook
