// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "plan/plan.h"

#include <vector>

namespace miterbook {

/// Where a house stands with the shop.
enum class HouseStage { bidding, won, underway, finished, paid };

template <>
struct Words<HouseStage> {
    static constexpr std::array list{
        Word{HouseStage::bidding, "bidding"},
        Word{HouseStage::won, "won"},
        Word{HouseStage::underway, "underway"},
        Word{HouseStage::finished, "finished"},
        Word{HouseStage::paid, "paid"},
    };
};

/// One plan with an elevation and options on a lot. `work` is the house's own copy of the plan as
/// selected; `plan` is the builder's plan it was started from.
struct House {
    Id<House> id;
    Id<Plan> plan;
    Id<Plan> work;
    std::string name;
    std::string lot;
    std::string address;
    HouseStage stage = HouseStage::bidding;
    Id<Variant> elevation;            ///< as chosen when it was started
    std::vector<Id<Variant>> options; ///< likewise
    Date started = noDate;
    std::string note;
    Date finished = noDate; ///< when the last piece of work was done

    bool operator==(const House&) const = default;
};

/// Whether its work is done, paid or not.
inline bool isFinished(const House& house) {
    return house.stage == HouseStage::finished || house.stage == HouseStage::paid;
}

template <>
struct Describe<House> {
    static constexpr std::string_view table = "house";
    static constexpr std::string_view noun = "house";
    static constexpr void allFields(auto&& take) {
        take(field("id", &House::id), field("plan", &House::plan), field("work", &House::work),
            field("name", &House::name), field("lot", &House::lot),
            field("address", &House::address), field("stage", &House::stage),
            field("elevation", &House::elevation), field("options", &House::options),
            field("started", &House::started), field("note", &House::note),
            field("finished", &House::finished));
    }
};

} // namespace miterbook
