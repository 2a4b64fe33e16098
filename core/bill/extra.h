// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/fields.h"
#include "basics/id.h"
#include "basics/money.h"
#include "basics/quantity.h"
#include "basics/result.h"
#include "book/task.h"

#include <string>

namespace miterbook {

struct House;

/// How far work beyond the bid has come. Dropped: it was not wanted after all.
enum class ExtraState { asked, priced, approved, done, billed, dropped };

template <>
struct Words<ExtraState> {
    static constexpr std::array list{
        Word{ExtraState::asked, "asked"},
        Word{ExtraState::priced, "priced"},
        Word{ExtraState::approved, "approved"},
        Word{ExtraState::done, "done"},
        Word{ExtraState::billed, "billed"},
        Word{ExtraState::dropped, "dropped"},
    };
};

/// Work beyond the bid of a house, priced and approved before it is done.
struct Extra {
    Id<Extra> id;
    Id<House> house;
    Date asked = noDate;
    std::string askedBy;
    std::string title;
    std::string note;
    ExtraState state = ExtraState::asked;
    Money price; ///< negative: work left out of the bid
    Date approved = noDate;
    std::string approvedBy;
    Date done = noDate;
    Money material; ///< what its material costs the shop; begins as its lines say

    bool operator==(const Extra&) const = default;
};

template <>
struct Describe<Extra> {
    static constexpr std::string_view table = "extra";
    static constexpr std::string_view noun = "extra";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Extra::id), field("house", &Extra::house), field("asked", &Extra::asked),
            field("asked_by", &Extra::askedBy), field("title", &Extra::title),
            field("note", &Extra::note), field("state", &Extra::state),
            field("price", &Extra::price), field("approved", &Extra::approved),
            field("approved_by", &Extra::approvedBy), field("done", &Extra::done),
            field("material", &Extra::material));
    }
};

/// Whether the extra is part of what the house is to bring: approved, and not dropped since.
bool isAgreed(const Extra& extra);
/// Whether somebody has to say "not approved" beside it: asked or priced.
bool lacksApproval(const Extra& extra);

// One step each. Error: a sentence when the extra is not where the step begins.

Result<Extra> pricedExtra(Extra extra, Money price);
/// `by` is the person who said yes; error when nobody is named.
Result<Extra> approvedExtra(Extra extra, const std::string& by, Date on);
Result<Extra> doneExtra(Extra extra, Date on);
Result<Extra> billedExtra(Extra extra);
/// When its bill was voided or credited: done again.
Result<Extra> unbilledExtra(Extra extra);
/// Not after it was done.
Result<Extra> droppedExtra(Extra extra);

} // namespace miterbook
