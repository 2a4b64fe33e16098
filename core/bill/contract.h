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

/// The price of one piece of work as it was agreed, and how much of it is done. The prices add up
/// to the contract sum.
struct ContractValue {
    PieceOfWork work = PieceOfWork::doors;
    Money price;
    Percent done; ///< where the contract is billed by piece of work

    bool operator==(const ContractValue&) const = default;
};

template <>
struct Describe<ContractValue> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "price of a contract";
    static constexpr void allFields(auto&& take) {
        take(field("work", &ContractValue::work), field("price", &ContractValue::price),
            field("done", &ContractValue::done));
    }
};

/// A stage at which a share of the contract falls due: "first trip", 60 %.
struct ContractStage {
    std::string name;
    Percent share;
    Date reached = noDate;

    bool operator==(const ContractStage&) const = default;
};

template <>
struct Describe<ContractStage> {
    static constexpr std::string_view table = "";
    static constexpr std::string_view noun = "stage of a contract";
    static constexpr void allFields(auto&& take) {
        take(field("name", &ContractStage::name), field("share", &ContractStage::share),
            field("reached", &ContractStage::reached));
    }
};

/// What was agreed on a house. One for each house that was won.
struct Contract {
    Id<Contract> id;
    Id<House> house;
    Id<Builder> builder;
    Date date = noDate;
    std::string purchaseOrder;
    DrawBy drawBy = DrawBy::work;
    Percent retainage;       ///< held back from each draw
    Percent tax;             ///< sales tax on what is billed; 0 where none is charged
    int dueDays = 30;        ///< from the date of an invoice
    Date completed = noDate; ///< where it is billed on completion
    std::vector<ContractValue> values;
    std::vector<ContractStage> stages; ///< where it is billed by stage

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
            field("due_days", &Contract::dueDays), field("completed", &Contract::completed),
            field("values", &Contract::values), field("stages", &Contract::stages));
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

/// The prices of the contract in piece of work order, then its agreed extras. Extras are those of
/// the house.
std::vector<ValueLine> scheduleOfValues(
    const std::vector<ContractValue>& values, const std::vector<Extra>& extras);

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

/// How far a contract has come by its own terms: each piece of work's share done, the shares of the
/// stages reached on every piece of work, or all of it once it is completed; and the whole of the
/// extras that are done.
std::vector<ValueProgress> progressOf(const Contract& contract,
    const std::vector<ValueLine>& schedule, const std::vector<Extra>& extras);

} // namespace miterbook
