// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bill/contract.h"

namespace miterbook {

/// How a builder is billed; a contract begins with these. Without a builder: the shop's own way,
/// for builders that have none.
struct BillingTerms {
    Id<BillingTerms> id;
    Id<Builder> builder;
    DrawBy drawBy = DrawBy::work;
    Percent retainage;
    Percent tax;
    int dueDays = 30;
    bool waiver = false; ///< a waiver is due with each payment
    std::vector<ContractStage> stages;

    bool operator==(const BillingTerms&) const = default;
};

template <>
struct Describe<BillingTerms> {
    static constexpr std::string_view table = "billing_terms";
    static constexpr std::string_view noun = "billing terms";
    static constexpr void allFields(auto&& take) {
        take(field("id", &BillingTerms::id), field("builder", &BillingTerms::builder),
            field("draw_by", &BillingTerms::drawBy), field("retainage", &BillingTerms::retainage),
            field("tax", &BillingTerms::tax), field("due_days", &BillingTerms::dueDays),
            field("waiver", &BillingTerms::waiver), field("stages", &BillingTerms::stages));
    }
};

} // namespace miterbook
