// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/check_parts.h"
#include "book/checks.h"

#include "basics/amount_text.h"
#include "basics/date.h"

namespace miterbook {

namespace {

constexpr Length widest = Length::feet(4); // a sheet's width
constexpr Length longestStock = Length::feet(40);
constexpr Money dearestStick = Money::dollars(10'000);

std::string text(Length length, const PriceBook& book) {
    return formatLengthWithUnit(length, book.shop().lengths());
}

std::string notBetween(Length most, const PriceBook& book) {
    const LengthUnit written = book.shop().unit;
    return " is not between 0 and "
        + (written == LengthUnit::millimetres ? text(most, book)
                                              : formatRunWithUnit(most, written, 0))
        + ".";
}

} // namespace

Result<void> check(const Profile& profile, const PriceBook& book) {
    const auto sized = [](Length length) { return length > Length() && length <= widest; };
    return Checks()
        .require(!isBlank(profile.name), "A profile needs a name.")
        .require(!anotherIs(book.of<Profile>(), profile,
                     [&](const Profile& other) { return other.name == profile.name; }),
            "There is a profile called \"" + profile.name + "\" already.")
        .require(sized(profile.thickness),
            profile.name + ": a thickness of " + text(profile.thickness, book)
                + notBetween(widest, book))
        .require(sized(profile.width),
            profile.name + ": a width of " + text(profile.width, book) + notBetween(widest, book))
        .require(profile.springAngle >= Angle() && profile.springAngle <= Angle::degrees(89),
            profile.name + ": a spring angle is measured from the wall, 0 to 89 degrees.")
        .result();
}

Result<void> check(const Stick& stick, const PriceBook& book) {
    const std::string of(book.profileName(stick.profile));
    return Checks()
        .require(
            book.profile(stick.profile) != nullptr, "A stick needs a profile that is in the book.")
        .require(stick.length > Length() && stick.length <= longestStock,
            of + ": a stick of " + text(stick.length, book) + notBetween(longestStock, book))
        .between(stick.price, dearestStick, of + ": a stick price")
        .require(!anotherIs(book.of<Stick>(), stick,
                     [&](const Stick& other) {
                         return other.profile == stick.profile && other.length == stick.length;
                     }),
            of + " has a stick of " + text(stick.length, book) + " already.")
        .result();
}

Result<void> check(const StickPrice& price, const PriceBook& book) {
    const Stick* stick = book.of<Stick>().find(price.stick);
    const std::string of(stick ? book.profileName(stick->profile) : "A price");
    return Checks()
        .require(stick != nullptr, "A supplier's price needs a stick that is in the book.")
        .require(price.from.ok(), of + ": a supplier's price needs the day it begins.")
        .between(price.price, dearestStick, of + ": a stick price")
        .require(price.quoted >= UnitPrice(), of + ": a supplier's price is not below zero.")
        .require(!anotherIs(book.of<StickPrice>(), price,
                     [&](const StickPrice& other) {
                         return other.stick == price.stick && other.from == price.from;
                     }),
            of + " has a price from " + formatDate(price.from, book.shop().monthFirst)
                + " on already.")
        .result();
}

Result<void> check(const Offcut& offcut, const PriceBook& book) {
    const std::string of(book.profileName(offcut.profile));
    return Checks()
        .require(book.profile(offcut.profile) != nullptr,
            "An offcut needs a profile that is in the book.")
        .require(offcut.length > Length() && offcut.length <= longestStock,
            of + ": an offcut of " + text(offcut.length, book) + notBetween(longestStock, book))
        .require(offcut.count >= 0 && offcut.count <= 10'000,
            of + ": a number of offcuts is between 0 and 10,000.")
        .result();
}

} // namespace miterbook
