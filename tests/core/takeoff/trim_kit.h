// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "takeoff/takeoff.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace miterbook::kit {

constexpr Length in(std::int64_t whole, int sixteenths = 0) {
    return Length::inches(whole) + Length::sixteenths(sixteenths);
}

constexpr Length ft(int feet, int inches = 0) {
    return Length::inches(feet * 12 + inches);
}

/// Profiles of the little book below; their ids are their places in it.
struct Profiles {
    Id<Profile> casing{1};    ///< 11/16 x 3 1/4, sticks 7, 14 and 16 ft
    Id<Profile> stool{2};     ///< 11/16 x 5 1/4, 12 and 16 ft
    Id<Profile> jamb{3};      ///< 3/4 x 4 9/16, 8 and 16 ft
    Id<Profile> base{4};      ///< 9/16 x 4 1/4, coped, 12 and 16 ft
    Id<Profile> shoe{5};      ///< 1/2 x 3/4, coped, 16 ft
    Id<Profile> crown{6};     ///< 9/16 x 3 5/8, 38 degrees, coped, 16 ft
    Id<Profile> oakCasing{7}; ///< as casing, stain grade hardwood
    Id<Profile> flatBase{8};  ///< 1/2 x 3, mitered joints, 16 ft
    Id<Profile> shelf{9};     ///< 3/4 x 11 1/4, 8 and 12 ft
    Id<Profile> board{10};    ///< 3/4 x 5 1/2, 16 ft
    Id<Profile> noStick{11};  ///< no stick stocked
};
inline constexpr Profiles profiles;

inline void addProfile(PriceBook& book, Id<Profile> id, ProfileUse use, Length thickness,
    Length width, std::initializer_list<int> stickFeet) {
    Profile row;
    row.id = id;
    row.name = "profile " + std::to_string(id.value());
    row.use = use;
    row.thickness = thickness;
    row.width = width;
    if (id == profiles.crown)
        row.springAngle = Angle::degrees(38);
    if (id == profiles.oakCasing) {
        row.finish = Finish::stain;
        row.hardwood = true;
    }
    if (id == profiles.flatBase)
        row.joint = Joint::mitered;
    book.of<Profile>().put(row);
    for (const int feet : stickFeet) {
        Stick stick;
        stick.id = Id<Stick>(id.value() * 100 + feet);
        stick.profile = id;
        stick.length = Length::feet(feet);
        stick.price = Money::dollars(feet);
        book.of<Stick>().put(stick);
    }
}

/// A book of the profiles above and the shop's practice as it begins (reveal 3/16, horn 3/4).
inline PriceBook littleBook() {
    PriceBook book;
    Practice practice;
    practice.id = Id<Practice>(1);
    book.of<Practice>().put(practice);
    addProfile(book, profiles.casing, ProfileUse::casing, in(0, 11), in(3, 4), {7, 14, 16});
    addProfile(book, profiles.stool, ProfileUse::stool, in(0, 11), in(5, 4), {12, 16});
    addProfile(book, profiles.jamb, ProfileUse::jamb, in(0, 12), in(4, 9), {8, 16});
    addProfile(book, profiles.base, ProfileUse::base, in(0, 9), in(4, 4), {12, 16});
    addProfile(book, profiles.shoe, ProfileUse::shoe, in(0, 8), in(0, 12), {16});
    addProfile(book, profiles.crown, ProfileUse::crown, in(0, 9), in(3, 10), {16});
    addProfile(book, profiles.oakCasing, ProfileUse::casing, in(0, 11), in(3, 4), {7, 14, 16});
    addProfile(book, profiles.flatBase, ProfileUse::base, in(0, 8), in(3), {16});
    addProfile(book, profiles.shelf, ProfileUse::shelf, in(0, 12), in(11, 4), {8, 12});
    addProfile(book, profiles.board, ProfileUse::board, in(0, 12), in(5, 8), {16});
    addProfile(book, profiles.noStick, ProfileUse::casing, in(0, 11), in(2, 4), {});
    return book;
}

/// A plan of one level and no rows, with the little book's profiles; no crown.
inline WholePlan emptyPlan() {
    WholePlan whole;
    whole.plan.id = Id<Plan>(1);
    whole.plan.name = "Test";
    whole.plan.windowCasing = whole.plan.doorCasing = profiles.casing;
    whole.plan.stool = profiles.stool;
    whole.plan.jamb = profiles.jamb;
    whole.plan.base = profiles.base;
    Level level;
    level.id = Id<Level>(1);
    level.name = "Main";
    whole.levels.push_back(level);
    return whole;
}

inline Opening window(Length width, Length height, TrimStyle style = TrimStyle::pictureFrame) {
    Opening row;
    row.id = Id<Opening>(1);
    row.level = Id<Level>(1);
    row.mark = "W1";
    row.width = width;
    row.height = height;
    row.style = style;
    return row;
}

inline Opening door(Length width, Length height = ft(6, 8)) {
    Opening row = window(width, height, TrimStyle::threeSided);
    row.kind = OpeningKind::prehungDoor;
    row.mark = "D1";
    row.sidesCased = 2;
    return row;
}

inline Room room(std::initializer_list<Length> walls) {
    Room row;
    row.id = Id<Room>(1);
    row.level = Id<Level>(1);
    row.name = "Den";
    for (const Length length : walls) {
        Wall wall;
        wall.length = length;
        row.walls.push_back(wall);
    }
    return row;
}

inline Takeoff takeOne(const Opening& opening, const PriceBook& book = littleBook()) {
    WholePlan whole = emptyPlan();
    whole.openings.push_back(opening);
    return takeOff(whole, book, 0);
}

inline Takeoff takeOne(
    const Room& row, std::vector<Opening> openings = {}, const PriceBook& book = littleBook()) {
    WholePlan whole = emptyPlan();
    whole.rooms.push_back(row);
    whole.openings = std::move(openings);
    return takeOff(whole, book, 0);
}

/// All pieces with this part name, in order.
inline std::vector<Piece> pieces(const Takeoff& takeoff, std::string_view part) {
    std::vector<Piece> found;
    for (const Piece& piece : takeoff.pieces) {
        if (piece.part == part)
            found.push_back(piece);
    }
    return found;
}

/// The only piece with this part name; a default one (no profile) and a failure when there is not
/// one.
inline Piece piece(const Takeoff& takeoff, std::string_view part) {
    const std::vector<Piece> found = pieces(takeoff, part);
    EXPECT_EQ(found.size(), 1U) << "pieces called " << part;
    return found.size() == 1 ? found[0] : Piece();
}

/// The amount of a task over all its sources, in thousandths of its unit.
inline std::int64_t amount(const Takeoff& takeoff, Task task) {
    std::int64_t sum = 0;
    for (const TaskCount& count : takeoff.tasks) {
        if (count.task == task)
            sum += count.quantity.thousandths();
    }
    return sum;
}

inline int parts(const Takeoff& takeoff, PartUse use) {
    int sum = 0;
    for (const PartCount& part : takeoff.parts) {
        if (part.use == use)
            sum += part.count;
    }
    return sum;
}

inline std::vector<std::string> sentences(
    const std::vector<Remark>& remarks, Remark::Weight weight) {
    std::vector<std::string> list;
    for (const Remark& remark : remarks) {
        if (remark.weight == weight)
            list.push_back(remark.sentence);
    }
    return list;
}

inline std::vector<std::string> warnings(const Takeoff& takeoff) {
    return sentences(takeoff.remarks, Remark::Weight::warning);
}

inline std::vector<std::string> problems(const Takeoff& takeoff) {
    return sentences(takeoff.remarks, Remark::Weight::problem);
}

} // namespace miterbook::kit
