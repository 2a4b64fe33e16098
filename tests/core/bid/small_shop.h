// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/estimate.h"

namespace miterbook {

/// A book with round numbers: a crew at $60.00 an hour without burden, casing sticks of 8 ft at
/// $8.00 and 16 ft at $15.00, base sticks of 16 ft at $16.00; no kerf, no tax, no consumables.
struct SmallShop {
    PriceBook prices;
    Id<Profile> casing;
    Id<Profile> base;
    IdSource ids;

    SmallShop();
    void addStick(Id<Profile> profile, Length length, Money price, bool stocked = true);
    void addOffcut(Id<Profile> profile, Length length, int count);
    void addRate(Task task, int minutes);
    void addFactor(Condition condition, int percent);
    void addPiecePrice(Task task, Money price);
    void addPart(PartUse use, Money price, bool builderSupplies = false);
    void addConsumable(Money price, int feetEach);
    void setTax(Percent tax);
    void setPractice(Length kerf, Length endTrim);
};

/// A source called `name`; the same id is the same row.
Source sourceAt(std::int64_t id, const std::string& name);

TaskCount taskOf(Task task, Quantity quantity, std::int64_t source, Conditions conditions = {});
Piece pieceOf(PieceOfWork work, Id<Profile> profile, Length length, int count, std::int64_t source);

/// A setup by cost and profit without overhead or profit.
BidSetup plainSetup();

/// The estimate of a takeoff with quick stick plans.
Estimate estimateOf(
    const Takeoff& takeoff, const SmallShop& shop, const BidSetup& setup, int floorArea = 0);

/// The total of a piece of work; zeros where the estimate has none.
WorkTotal workOf(const Estimate& estimate, PieceOfWork work);

} // namespace miterbook
