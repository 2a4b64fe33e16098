// SPDX-License-Identifier: GPL-3.0-or-later
#include "small_shop.h"

namespace miterbook {

SmallShop::SmallShop() {
    Practice practice;
    practice.id = Id<Practice>(1);
    practice.kerf = Length();
    prices.of<Practice>().put(practice);
    for (Id<Profile>* id : {&casing, &base}) {
        Profile profile;
        profile.id = *id = ids.next<Profile>();
        profile.name = id == &casing ? "Flat casing" : "Flat base";
        profile.use = id == &casing ? ProfileUse::casing : ProfileUse::base;
        prices.of<Profile>().put(profile);
    }
    addStick(casing, Length::feet(8), Money::dollars(8));
    addStick(casing, Length::feet(16), Money::dollars(15));
    addStick(base, Length::feet(16), Money::dollars(16));
    prices.of<CrewMember>().put({ids.next<CrewMember>(), "Ola Brandt", Money::dollars(60), true});
}

void SmallShop::addStick(Id<Profile> profile, Length length, Money price, bool stocked) {
    prices.of<Stick>().put({ids.next<Stick>(), profile, length, price, stocked, Origin::shop});
}

void SmallShop::addOffcut(Id<Profile> profile, Length length, int count) {
    prices.of<Offcut>().put({ids.next<Offcut>(), profile, length, count, {}});
}

void SmallShop::addRate(Task task, int minutes) {
    prices.of<LabourRate>().put(
        {ids.next<LabourRate>(), task, MinutesPerUnit::whole(minutes), Origin::shop, "our houses"});
}

void SmallShop::addFactor(Condition condition, int percent) {
    prices.of<Factor>().put(
        {ids.next<Factor>(), condition, Percent::whole(percent), Origin::shop, {}});
}

void SmallShop::addPiecePrice(Task task, Money price) {
    prices.of<PiecePrice>().put(
        {ids.next<PiecePrice>(), task, UnitPrice::cents(price.cents()), Origin::shop});
}

void SmallShop::addPart(PartUse use, Money price, bool builderSupplies) {
    prices.of<Part>().put(
        {ids.next<Part>(), std::string(word(use)), use, price, builderSupplies, Origin::shop});
}

void SmallShop::addConsumable(Money price, int feetEach) {
    prices.of<Consumable>().put(
        {ids.next<Consumable>(), "Nails", price, feetEach, Origin::shop, {}});
}

void SmallShop::setTax(Percent tax) {
    Terms terms = prices.terms();
    terms.id = Id<Terms>(1);
    terms.materialTax = tax;
    prices.of<Terms>().put(terms);
}

void SmallShop::setPractice(Length kerf, Length endTrim) {
    Practice practice = prices.practice();
    practice.kerf = kerf;
    practice.endTrim = endTrim;
    prices.of<Practice>().put(practice);
}

Source sourceAt(std::int64_t id, const std::string& name) {
    return {Id<Opening>(id), {}, {}, name};
}

TaskCount taskOf(Task task, Quantity quantity, std::int64_t source, Conditions conditions) {
    return {pieceOfWork(task), task, quantity, conditions,
        sourceAt(source, "W" + std::to_string(source)), {}};
}

Piece pieceOf(
    PieceOfWork work, Id<Profile> profile, Length length, int count, std::int64_t source) {
    Piece piece;
    piece.work = work;
    piece.source = sourceAt(source, "W" + std::to_string(source));
    piece.profile = profile;
    piece.shortPoint = piece.longPoint = length;
    piece.count = count;
    return piece;
}

BidSetup plainSetup() {
    BidSetup setup;
    setup.overhead = Percent();
    setup.profit = Percent();
    return setup;
}

Estimate estimateOf(
    const Takeoff& takeoff, const SmallShop& shop, const BidSetup& setup, int floorArea) {
    return estimate(takeoff, planAllSticks(stickNeeds(takeoff), shop.prices, Effort::quick),
        shop.prices, setup, floorArea);
}

WorkTotal workOf(const Estimate& estimate, PieceOfWork work) {
    for (const WorkTotal& total : estimate.works) {
        if (total.work == work)
            return total;
    }
    return {};
}

} // namespace miterbook
