// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/long_text.h"
#include "basics/money.h"
#include "basics/words.h"

namespace miterbook {

struct Plan;

/// What kind of paper was given out of hand. Each kind has its own numbers; invoices and credit
/// notes share one series.
enum class IssuedKind { bid, priceSheet, order, extra, invoice, creditNote };

template <>
struct Words<IssuedKind> {
    static constexpr std::array list{
        Word{IssuedKind::bid, "bid"},
        Word{IssuedKind::priceSheet, "price sheet"},
        Word{IssuedKind::order, "order"},
        Word{IssuedKind::extra, "extra"},
        Word{IssuedKind::invoice, "invoice"},
        Word{IssuedKind::creditNote, "credit note"},
    };
};

/// A paper as it was given out of hand, frozen with its numbers. It is never changed or removed;
/// only another paper follows it. Read with its plan.
struct IssuedPaper {
    Id<IssuedPaper> id;
    Id<Plan> plan; ///< a builder's plan, or a house's own
    IssuedKind kind = IssuedKind::bid;
    int number = 0;
    int revision = 0;
    Date date = noDate;
    Money amount;    ///< what it asks or offers
    LongText paper;  ///< what freezePaper wrote
    std::string sum; ///< SHA-256 of that text

    bool operator==(const IssuedPaper&) const = default;
};

template <>
struct Describe<IssuedPaper> {
    static constexpr std::string_view table = "issued_paper";
    static constexpr std::string_view noun = "issued paper";
    static constexpr void allFields(auto&& take) {
        take(field("id", &IssuedPaper::id), field("plan", &IssuedPaper::plan),
            field("kind", &IssuedPaper::kind), field("number", &IssuedPaper::number),
            field("revision", &IssuedPaper::revision), field("date", &IssuedPaper::date),
            field("amount", &IssuedPaper::amount), field("paper", &IssuedPaper::paper),
            field("sum", &IssuedPaper::sum));
    }
};

} // namespace miterbook
