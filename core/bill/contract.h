// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/money.h"
#include "bill/extra.h"
#include "book/builder.h"
#include "book/piece_of_work.h"

#include <string>
#include <vector>

namespace miterbook {

/// When a house is billed.
enum class DrawBy { work, stage, completion };

template <>
struct Words<DrawBy> {
    static constexpr std::array list{
        Word{DrawBy::work, "by piece of work"},
        Word{DrawBy::stage, "by stage"},
        Word{DrawBy::completion, "on completion"},
    };
};

/// What was agreed on a house. One for each house that was won.
struct Contract {
    Id<Contract> id;
    Id<House> house;
    Id<Builder> builder;
    Date date = noDate;
    std::string purchaseOrder;
    DrawBy drawBy = DrawBy::work;
    Percent retainage; ///< held back from each draw
    Percent tax;       ///< sales tax on what is billed; 0 where none is charged
    int dueDays = 30;  ///< from the date of an invoice

    bool operator==(const Contract&) const = default;
};

template <>
struct Describe<Contract> {
    static constexpr std::string_view table = "contract";
    static constexpr std::string_view noun = "contract";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Contract::id), field("house", &Contract::house),
            field("builder", &Contract::builder), field("date", &Contract::date),
            field("purchase_order", &Contract::purchaseOrder), field("draw_by", &Contract::drawBy),
            field("retainage", &Contract::retainage), field("tax", &Contract::tax),
            field("due_days", &Contract::dueDays));
    }
};

/// The price of one piece of work as it was agreed; the lines add up to the contract sum.
struct ContractLine {
    Id<ContractLine> id;
    Id<Contract> contract;
    PieceOfWork work = PieceOfWork::doors;
    Money price;

    bool operator==(const ContractLine&) const = default;
};

template <>
struct Describe<ContractLine> {
    static constexpr std::string_view table = "contract_line";
    static constexpr std::string_view noun = "line of a contract";
    static constexpr void allFields(auto&& take) {
        take(field("id", &ContractLine::id), field("contract", &ContractLine::contract),
            field("work", &ContractLine::work), field("price", &ContractLine::price));
    }
};

/// A stage at which a share of the contract falls due: "first trip", 60 %.
struct DrawStage {
    Id<DrawStage> id;
    Id<Contract> contract;
    int position = 0;
    std::string name;
    Percent share;

    bool operator==(const DrawStage&) const = default;
};

template <>
struct Describe<DrawStage> {
    static constexpr std::string_view table = "draw_stage";
    static constexpr std::string_view noun = "stage of a contract";
    static constexpr void allFields(auto&& take) {
        take(field("id", &DrawStage::id), field("contract", &DrawStage::contract),
            field("position", &DrawStage::position), field("name", &DrawStage::name),
            field("share", &DrawStage::share));
    }
};

/// What a line of the schedule of values stands for: a piece of work of the contract, or an extra.
struct ValueKey {
    PieceOfWork work = PieceOfWork::doors; ///< extras for an extra
    Id<Extra> extra;

    auto operator<=>(const ValueKey&) const = default;
};

/// One line of the schedule of values.
struct ValueLine {
    ValueKey key;
    std::string label;
    Money amount;

    bool operator==(const ValueLine&) const = default;
};

/// The lines of the contract in piece of work order, then its agreed extras. Extras are those of
/// the house.
std::vector<ValueLine> scheduleOfValues(
    const std::vector<ContractLine>& lines, const std::vector<Extra>& extras);

/// What a schedule of values adds up to.
Money valueOf(const std::vector<ValueLine>& schedule);

/// How much of a line is earned.
struct ValueProgress {
    ValueKey key;
    Percent toDate;
};

/// Earned to date over a schedule: each line's share rounded to the cent; a line without progress
/// has earned nothing.
Money earnedToDate(
    const std::vector<ValueLine>& schedule, const std::vector<ValueProgress>& progress);

/// Progress of a contract billed by stage: the shares of the stages up to `reached` (a position) on
/// every line of the contract, and the whole of the extras that are done.
std::vector<ValueProgress> progressByStage(const std::vector<ValueLine>& schedule,
    const std::vector<DrawStage>& stages, int reached, const std::vector<Extra>& extras);

/// Progress of a contract billed on completion: the whole of it and of the extras done.
std::vector<ValueProgress> progressOnCompletion(
    const std::vector<ValueLine>& schedule, const std::vector<Extra>& extras);

} // namespace miterbook
