// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/hours.h"
#include "basics/id.h"
#include "basics/money.h"
#include "basics/percent.h"
#include "book/condition.h"
#include "book/origin.h"
#include "book/task.h"

#include <string>

namespace miterbook {

/// Minutes of one carpenter for one unit of a task under plain conditions.
struct LabourRate {
    Id<LabourRate> id;
    Task task = Task::other;
    MinutesPerUnit minutes;
    Origin origin = Origin::shop;
    std::string source; ///< "common practice, 50-75"

    bool operator==(const LabourRate&) const = default;
};

template <>
struct Describe<LabourRate> {
    static constexpr std::string_view table = "labour_rate";
    static constexpr std::string_view noun = "labour rate";
    static constexpr void allFields(auto&& take) {
        take(field("id", &LabourRate::id), field("task", &LabourRate::task),
            field("minutes", &LabourRate::minutes), field("origin", &LabourRate::origin),
            field("source", &LabourRate::source));
    }
};

/// What a condition multiplies minutes by: 130 % takes 1.3 times as long.
struct Factor {
    Id<Factor> id;
    Condition condition = Condition::stainGrade;
    Percent percent = Percent::hundred();
    Origin origin = Origin::shop;
    std::string source;

    bool operator==(const Factor&) const = default;
};

template <>
struct Describe<Factor> {
    static constexpr std::string_view table = "factor";
    static constexpr std::string_view noun = "factor";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Factor::id), field("condition", &Factor::condition),
            field("percent", &Factor::percent), field("origin", &Factor::origin),
            field("source", &Factor::source));
    }
};

/// The shop's own price for one unit of a task, material and labour together.
struct PiecePrice {
    Id<PiecePrice> id;
    Task task = Task::other;
    UnitPrice price;
    Origin origin = Origin::shop;
    bool quoted = false; ///< bids quote it as the unit price of an extra

    bool operator==(const PiecePrice&) const = default;
};

template <>
struct Describe<PiecePrice> {
    static constexpr std::string_view table = "piece_price";
    static constexpr std::string_view noun = "piece price";
    static constexpr void allFields(auto&& take) {
        take(field("id", &PiecePrice::id), field("task", &PiecePrice::task),
            field("price", &PiecePrice::price), field("origin", &PiecePrice::origin),
            field("quoted", &PiecePrice::quoted));
    }
};

} // namespace miterbook
