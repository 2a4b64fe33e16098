// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/week.h"

namespace miterbook {

/// How the crew is paid. One row, id 1. Law differs by state and changes: the shop sets it.
struct PayTerms {
    Id<PayTerms> id;
    WeekStart weekStart = WeekStart::monday;
    Hours overtimeAfter = Hours::whole(40);       ///< a week
    Percent overtimeFactor = Percent::whole(150); ///< of the straight rate, over those hours
    bool overtimeOnPieces = true; ///< a piece crew gets the extra on piece pay / hours

    bool operator==(const PayTerms&) const = default;
};

template <>
struct Describe<PayTerms> {
    static constexpr std::string_view table = "pay_terms";
    static constexpr std::string_view noun = "pay terms";
    static constexpr void allFields(auto&& take) {
        take(field("id", &PayTerms::id), field("week_start", &PayTerms::weekStart),
            field("overtime_after", &PayTerms::overtimeAfter),
            field("overtime_factor", &PayTerms::overtimeFactor),
            field("overtime_on_pieces", &PayTerms::overtimeOnPieces));
    }
};

/// By the hour, or by what is finished (hours are kept all the same).
enum class PayBasis { hourly, piece };

template <>
struct Words<PayBasis> {
    static constexpr std::array list{
        Word{PayBasis::hourly, "by the hour"}, Word{PayBasis::piece, "by the piece"}};
};

/// On which basis somebody is paid; whoever has no row is paid by the hour.
struct CrewPay {
    Id<CrewPay> id;
    Id<CrewMember> person;
    PayBasis basis = PayBasis::hourly;

    bool operator==(const CrewPay&) const = default;
};

template <>
struct Describe<CrewPay> {
    static constexpr std::string_view table = "crew_pay";
    static constexpr std::string_view noun = "basis of pay";
    static constexpr void allFields(auto&& take) {
        take(field("id", &CrewPay::id), field("person", &CrewPay::person),
            field("basis", &CrewPay::basis));
    }
};

/// What a piece crew gets for one finished unit: of a task, or of a piece of work where the task is
/// Task::other.
struct PieceRate {
    Id<PieceRate> id;
    Id<CrewMember> person; ///< none: whoever has no rate of his own
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    UnitPrice pay;

    bool operator==(const PieceRate&) const = default;
};

template <>
struct Describe<PieceRate> {
    static constexpr std::string_view table = "piece_rate";
    static constexpr std::string_view noun = "piece rate";
    static constexpr void allFields(auto&& take) {
        take(field("id", &PieceRate::id), field("person", &PieceRate::person),
            field("work", &PieceRate::work), field("task", &PieceRate::task),
            field("pay", &PieceRate::pay));
    }
};

/// The rate that pays an entry: the person's own before everybody's; nullptr when there is none.
const PieceRate* rateFor(const std::vector<PieceRate>& rates, const TimeEntry& entry);

} // namespace miterbook
