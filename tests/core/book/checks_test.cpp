// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/checks.h"

#include <gmock/gmock.h>

namespace miterbook {
namespace {

using ::testing::HasSubstr;

/// The sentence that refuses a row; empty when the row is taken.
template <class Row>
std::string refusal(const Row& row, const PriceBook& book = {}) {
    const Result<void> checked = check(row, book);
    return checked.ok() ? std::string() : checked.error().sentence;
}

Profile soundProfile() {
    Profile profile;
    profile.id = Id<Profile>(1);
    profile.name = "Flat casing";
    profile.thickness = Length::sixteenths(11);
    profile.width = Length::sixteenths(52);
    return profile;
}

PriceBook bookWithProfile() {
    PriceBook book;
    book.of<Profile>().put(soundProfile());
    return book;
}

TEST(CheckProfile, TakesASoundOne) {
    EXPECT_EQ(refusal(soundProfile(), bookWithProfile()), "");
}

TEST(CheckProfile, NeedsANameOfItsOwn) {
    Profile profile = soundProfile();
    profile.name = "  ";
    EXPECT_EQ(refusal(profile), "A profile needs a name.");
    profile.name = "Flat casing";
    profile.id = Id<Profile>(2);
    EXPECT_THAT(refusal(profile, bookWithProfile()), HasSubstr("\"Flat casing\" already"));
}

TEST(CheckProfile, RefusesSizesOfNothing) {
    Profile profile = soundProfile();
    profile.width = Length();
    EXPECT_THAT(refusal(profile), HasSubstr("a width of"));
    profile.width = Length::feet(5);
    EXPECT_THAT(refusal(profile), HasSubstr("a width of"));
    profile = soundProfile();
    profile.thickness = Length::inches(-1);
    EXPECT_THAT(refusal(profile), HasSubstr("a thickness of"));
}

TEST(CheckProfile, KeepsTheSpringAngleBelowNinety) {
    Profile profile = soundProfile();
    profile.springAngle = Angle::degrees(89);
    EXPECT_EQ(refusal(profile), "");
    profile.springAngle = Angle::degrees(90);
    EXPECT_THAT(refusal(profile), HasSubstr("spring angle"));
    profile.springAngle = Angle::hundredths(-1);
    EXPECT_THAT(refusal(profile), HasSubstr("spring angle"));
}

TEST(CheckStick, RefusesAbsurdLengthsAndPrices) {
    const PriceBook book = bookWithProfile();
    const Stick sound{Id<Stick>(1), Id<Profile>(1), Length::feet(16), Money::dollars(20)};
    EXPECT_EQ(refusal(sound, book), "");
    Stick stick = sound;
    stick.length = Length();
    EXPECT_THAT(refusal(stick, book), HasSubstr("Flat casing: a stick of"));
    stick.length = Length::feet(41);
    EXPECT_THAT(refusal(stick, book), HasSubstr("40 ft"));
    stick = sound;
    stick.price = Money::cents(-1);
    EXPECT_THAT(refusal(stick, book), HasSubstr("a stick price of -0.01"));
    stick = sound;
    stick.profile = Id<Profile>(99);
    EXPECT_THAT(refusal(stick, book), HasSubstr("in the book"));
}

TEST(CheckStick, RefusesTheSameLengthTwice) {
    PriceBook book = bookWithProfile();
    book.of<Stick>().put({Id<Stick>(1), Id<Profile>(1), Length::feet(16), Money::dollars(20)});
    const Stick again{Id<Stick>(2), Id<Profile>(1), Length::feet(16), Money::dollars(22)};
    EXPECT_THAT(refusal(again, book), HasSubstr("already"));
}

TEST(CheckStickPrice, NeedsAStickAndADayOfItsOwn) {
    PriceBook book = bookWithProfile();
    book.of<Stick>().put({Id<Stick>(5), Id<Profile>(1), Length::feet(16), Money::dollars(20)});
    const Date may = std::chrono::year(2026) / 5 / 1;
    const StickPrice sound{Id<StickPrice>(6), Id<Stick>(5), may, Money::dollars(21),
        UnitPrice::cents(131), PricePer::foot, "Tolliver Yard"};
    EXPECT_EQ(refusal(sound, book), "");
    StickPrice price = sound;
    price.stick = Id<Stick>(7);
    EXPECT_THAT(refusal(price, book), HasSubstr("a stick that is in the book"));
    price = sound;
    price.from = noDate;
    EXPECT_EQ(refusal(price, book), "Flat casing: a supplier's price needs the day it begins.");
    price = sound;
    price.price = Money::dollars(10'001);
    EXPECT_THAT(refusal(price, book), HasSubstr("Flat casing: a stick price of 10,001.00"));
    book.of<StickPrice>().put(sound);
    EXPECT_EQ(refusal(sound, book), ""); // itself is no other
    price = sound;
    price.id = Id<StickPrice>(8);
    EXPECT_EQ(refusal(price, book), "Flat casing has a price from 5/1/2026 on already.");
    price.from = addDays(may, 1);
    EXPECT_EQ(refusal(price, book), "");
}

TEST(CheckBurden, OneOfANameFromADay) {
    PriceBook book;
    Burden fica;
    fica.id = Id<Burden>(1);
    fica.name = "FICA";
    fica.from = std::chrono::year(2026) / 1 / 1;
    book.of<Burden>().put(fica);
    EXPECT_EQ(refusal(fica, book), "");
    fica.id = Id<Burden>(2);
    EXPECT_EQ(refusal(fica, book), "FICA has figures from 1/1/2026 on already.");
    fica.from = std::chrono::year(2027) / 1 / 1;
    EXPECT_EQ(refusal(fica, book), "");
}

TEST(CheckTerms, RulesOfAPrice) {
    Terms terms;
    terms.minimumJob = Money::dollars(350);
    terms.roundTo = Money::dollars(5);
    terms.hourlyRate = Money::dollars(75);
    EXPECT_EQ(refusal(terms), "");
    terms.minimumJob = Money::cents(-1);
    EXPECT_THAT(refusal(terms), HasSubstr("A minimum job of -0.01"));
    terms = Terms();
    terms.roundTo = Money::dollars(1'001);
    EXPECT_THAT(refusal(terms), HasSubstr("rounded up to of 1,001.00"));
    terms = Terms();
    terms.hourlyRate = Money::cents(-100);
    EXPECT_THAT(refusal(terms), HasSubstr("An hourly rate"));
}

TEST(CheckOffcut, RefusesNegativeCounts) {
    const PriceBook book = bookWithProfile();
    Offcut offcut{Id<Offcut>(1), Id<Profile>(1), Length::feet(3), 2, {}};
    EXPECT_EQ(refusal(offcut, book), "");
    offcut.count = -1;
    EXPECT_THAT(refusal(offcut, book), HasSubstr("number of offcuts"));
    offcut.count = 1;
    offcut.length = Length::feet(-3);
    EXPECT_THAT(refusal(offcut, book), HasSubstr("an offcut of"));
}

TEST(CheckRate, OneForEachTask) {
    PriceBook book;
    LabourRate rate{Id<LabourRate>(1), Task::base, MinutesPerUnit::whole(2), Origin::shop, {}};
    book.of<LabourRate>().put(rate);
    EXPECT_EQ(refusal(rate, book), "");
    rate.id = Id<LabourRate>(2);
    EXPECT_EQ(refusal(rate, book), "There is a labour rate for \"base, one piece\" already.");
    rate.task = Task::shoe;
    rate.minutes = MinutesPerUnit::hundredths(-1);
    EXPECT_THAT(refusal(rate, book), HasSubstr("is not between 0 and 10000"));
}

TEST(CheckFactor, OneForEachConditionAndSensible) {
    PriceBook book;
    Factor factor{Id<Factor>(1), Condition::radius, Percent::whole(300), Origin::shop, {}};
    book.of<Factor>().put(factor);
    EXPECT_EQ(refusal(factor, book), "");
    factor.id = Id<Factor>(2);
    EXPECT_EQ(refusal(factor, book), "There is a factor for \"radius\" already.");
    factor.condition = Condition::hardwood;
    factor.percent = Percent();
    EXPECT_THAT(refusal(factor, book), HasSubstr("between 10 % and 2000 %"));
}

TEST(CheckPiecePrice, OneForEachTaskAndNotNegative) {
    PriceBook book;
    PiecePrice price{Id<PiecePrice>(1), Task::base, UnitPrice::cents(450)};
    book.of<PiecePrice>().put(price);
    EXPECT_EQ(refusal(price, book), "");
    price.id = Id<PiecePrice>(2);
    EXPECT_THAT(refusal(price, book), HasSubstr("already"));
    price.task = Task::shoe;
    price.price = UnitPrice::cents(-1);
    EXPECT_THAT(refusal(price, book), HasSubstr("piece price of -0.01"));
}

TEST(CheckCrew, RefusesNamelessAndNegativeWages) {
    CrewMember member{Id<CrewMember>(1), "Ola Brandt", Money::dollars(30)};
    EXPECT_EQ(refusal(member), "");
    member.wage = Money::cents(-1);
    EXPECT_THAT(refusal(member), HasSubstr("Ola Brandt: a wage an hour of -0.01"));
    member.wage = Money::dollars(501);
    EXPECT_THAT(refusal(member), HasSubstr("between 0 and 500.00"));
    member.name = "";
    EXPECT_EQ(refusal(member), "A crew member needs a name.");
}

TEST(CheckBurden, RefusesAbsurdShares) {
    Burden item{Id<Burden>(1), "FICA", Percent::basisPoints(765), Money(), 2025, Origin::shop, {}};
    EXPECT_EQ(refusal(item), "");
    item.ofWages = Percent::whole(201);
    EXPECT_THAT(refusal(item), HasSubstr("a share of wages of 201 %"));
    item.ofWages = Percent();
    item.perYear = Money::dollars(-42);
    EXPECT_THAT(refusal(item), HasSubstr("an amount a year of -42.00"));
    item.perYear = Money();
    item.year = 25;
    EXPECT_THAT(refusal(item), HasSubstr("25 is not a year"));
}

TEST(CheckTerms, AMarginStaysBelowOneHundred) {
    Terms terms;
    EXPECT_EQ(refusal(terms), "");
    terms.profitKind = ProfitKind::marginOnPrice;
    terms.profit = Percent::basisPoints(9999);
    EXPECT_EQ(refusal(terms), "");
    terms.profit = Percent::hundred();
    EXPECT_THAT(refusal(terms), HasSubstr("cannot be reached"));
    terms.profitKind = ProfitKind::markupOnCost;
    EXPECT_EQ(refusal(terms), "");
    terms.profit = Percent::whole(-1);
    EXPECT_THAT(refusal(terms), HasSubstr("A markup on cost of -1 %"));
}

TEST(CheckTerms, RefusesAbsurdOverheadTaxAndHours) {
    Terms terms;
    terms.overhead = Percent::whole(201);
    EXPECT_THAT(refusal(terms), HasSubstr("Overhead of 201 %"));
    terms = Terms();
    terms.contingency = Percent::whole(101);
    EXPECT_THAT(refusal(terms), HasSubstr("Contingency of 101 %"));
    terms = Terms();
    terms.delivery = Money::dollars(-1);
    EXPECT_THAT(refusal(terms), HasSubstr("Delivery"));
    terms = Terms();
    terms.materialTax = Percent::whole(51);
    EXPECT_THAT(refusal(terms), HasSubstr("tax on material"));
    terms = Terms();
    terms.hoursPerYear = 0;
    EXPECT_THAT(refusal(terms), HasSubstr("Hours a year"));
    terms = Terms();
    terms.tripsPerHouse = -1;
    EXPECT_THAT(refusal(terms), HasSubstr("Trips"));
    terms = Terms();
    terms.validDays = -1;
    EXPECT_THAT(refusal(terms), HasSubstr("A bid stands"));
}

TEST(CheckPractice, EverySettingHasItsLimits) {
    Practice practice;
    EXPECT_EQ(refusal(practice), "");
    practice.kerf = Length::inches(2);
    EXPECT_THAT(refusal(practice), HasSubstr("The kerf of 2"));
    practice = Practice();
    practice.endTrim = Length::inches(-1);
    EXPECT_THAT(refusal(practice), HasSubstr("The end trim of -1"));
    practice = Practice();
    practice.sawSwing = Angle();
    EXPECT_THAT(refusal(practice), HasSubstr("swings"));
    practice = Practice();
    practice.spareSticks = -1;
    EXPECT_THAT(refusal(practice), HasSubstr("Spare sticks"));
    practice = Practice();
    practice.offcutWorth = Percent::whole(101);
    EXPECT_THAT(refusal(practice), HasSubstr("The worth of an offcut of 101 %"));
}

TEST(CheckPart, OneForEachUse) {
    PriceBook book;
    Part part{Id<Part>(1), "Newel", PartUse::newel, Money::dollars(100)};
    book.of<Part>().put(part);
    EXPECT_EQ(refusal(part, book), "");
    part.id = Id<Part>(2);
    EXPECT_THAT(refusal(part, book), HasSubstr("\"newel\" already"));
    part.use = PartUse::other; // any number of those
    EXPECT_EQ(refusal(part, book), "");
    part.price = Money::cents(-1);
    EXPECT_THAT(refusal(part, book), HasSubstr("a price of -0.01"));
    part.name.clear();
    EXPECT_EQ(refusal(part, book), "A part needs a name.");
}

TEST(CheckConsumable, ServesSomeFeet) {
    Consumable consumable{Id<Consumable>(1), "Caulk", Money::dollars(5), 90, Origin::shop, {}};
    EXPECT_EQ(refusal(consumable), "");
    consumable.feetEach = 0;
    EXPECT_THAT(refusal(consumable), HasSubstr("between 1 and"));
}

TEST(CheckShopBuilderAndHeader, NeedTheirWords) {
    Shop shop;
    EXPECT_EQ(refusal(shop), "");
    shop.denominator = 10;
    EXPECT_THAT(refusal(shop), HasSubstr("1/16 or 1/32"));
    shop = Shop();
    shop.currency.clear();
    EXPECT_THAT(refusal(shop), HasSubstr("currency"));
    EXPECT_EQ(refusal(Builder()), "A builder needs a name.");
    PriceBook book;
    book.of<Builder>().put({Id<Builder>(1), "Corrin Homes", {}, {}, {}, {}, {}});
    EXPECT_THAT(refusal(Builder{Id<Builder>(2), "Corrin Homes", {}, {}, {}, {}, {}}, book),
        HasSubstr("already"));
    EXPECT_THAT(refusal(HeaderName()), HasSubstr("header"));
}

} // namespace
} // namespace miterbook
