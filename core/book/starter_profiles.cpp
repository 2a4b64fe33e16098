// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/starter_profiles.h"

#include <span>

namespace miterbook {

namespace {

constexpr const char* verify = "[from memory] verify with your supplier";

/// Stock lengths in feet. 7 ft sticks and 17 ft sets (two legs and a head) are run for casings.
constexpr int casingFeet[] = {7, 8, 10, 12, 14, 16, 17};
constexpr int hardwoodCasingFeet[] = {7, 8, 10, 12, 14};
constexpr int runFeet[] = {8, 10, 12, 14, 16};
constexpr int jambFeet[] = {7, 8, 10, 12, 14, 16};
constexpr int shelfFeet[] = {8, 10, 12};

struct Material {
    const char* name;
    Finish finish;
    bool hardwood;
};

constexpr Material primedPine{"primed pine", Finish::paint, false};
constexpr Material pine{"pine", Finish::paint, false};
constexpr Material redOak{"red oak", Finish::stain, true};

struct Entry {
    const char* name;
    ProfileUse use;
    int thickness; ///< sixteenths of an inch
    int width;     ///< sixteenths of an inch
    const Material& material;
    std::span<const int> feet;
    int centsPerFoot;
    int spring = 0; ///< degrees from the wall
    bool symmetric = false;
};

/// Sizes: the WM pattern book as remembered, in the order of the trade's catalogues.
const Entry mouldings[] = {
    {"WM 356 casing", ProfileUse::casing, 11, 36, primedPine, casingFeet, 95},
    {"WM 366 casing", ProfileUse::casing, 11, 36, primedPine, casingFeet, 95},
    {"WM 445 casing", ProfileUse::casing, 11, 52, primedPine, casingFeet, 130},
    {"WM 444 casing", ProfileUse::casing, 11, 56, primedPine, casingFeet, 140},
    {"WM 356 casing, red oak", ProfileUse::casing, 11, 36, redOak, hardwoodCasingFeet, 235},
    {"WM 623 base", ProfileUse::base, 9, 52, primedPine, runFeet, 110},
    {"WM 620 base", ProfileUse::base, 9, 68, primedPine, runFeet, 145},
    {"WM 618 base", ProfileUse::base, 9, 84, primedPine, runFeet, 175},
    {"WM 623 base, red oak", ProfileUse::base, 9, 52, redOak, runFeet, 290},
    {"WM 163 base cap", ProfileUse::baseCap, 11, 22, primedPine, runFeet, 85},
    {"WM 126 shoe", ProfileUse::shoe, 8, 12, primedPine, runFeet, 45},
    {"WM 126 shoe, red oak", ProfileUse::shoe, 8, 12, redOak, runFeet, 95},
    {"WM 106 quarter round", ProfileUse::shoe, 11, 11, primedPine, runFeet, 55},
    {"WM 49 crown", ProfileUse::crown, 9, 58, primedPine, runFeet, 160, 38},
    {"WM 47 crown", ProfileUse::crown, 11, 74, primedPine, runFeet, 215, 38},
    {"WM 947 stop", ProfileUse::stop, 7, 20, primedPine, casingFeet, 55},
    {"WM 1021 stool", ProfileUse::stool, 11, 84, primedPine, runFeet, 290},
    {"WM 297 chair rail", ProfileUse::chairRail, 11, 48, primedPine, runFeet, 150},
    {"WM 390 chair rail", ProfileUse::chairRail, 11, 42, primedPine, runFeet, 135},
    {"WM 280 back band", ProfileUse::backBand, 11, 17, primedPine, runFeet, 90},
};

/// Plain stock, the same either way round. Jamb 4 9/16 suits 2x4 walls, 6 9/16 suits 2x6 walls.
const Entry boards[] = {
    {"Jamb 4 9/16", ProfileUse::jamb, 11, 73, primedPine, jambFeet, 210, 0, true},
    {"Jamb 6 9/16", ProfileUse::jamb, 11, 105, primedPine, jambFeet, 320, 0, true},
    {"Board 1x4", ProfileUse::board, 12, 56, primedPine, runFeet, 125, 0, true},
    {"Board 1x6", ProfileUse::board, 12, 88, primedPine, runFeet, 195, 0, true},
    {"Skirt board 1x12", ProfileUse::board, 12, 180, primedPine, runFeet, 410, 0, true},
    {"Cleat 1x2", ProfileUse::cleat, 12, 24, pine, runFeet, 60, 0, true},
    {"Shelf 12 in", ProfileUse::shelf, 12, 188, primedPine, shelfFeet, 260, 0, true},
    {"Shelf 16 in", ProfileUse::shelf, 12, 252, primedPine, shelfFeet, 345, 0, true},
    {"Closet rod 1 5/16", ProfileUse::rod, 21, 21, pine, runFeet, 190, 0, true},
    {"Handrail 2 1/4", ProfileUse::handrail, 38, 36, redOak, runFeet, 690},
};

Joint jointOf(const Entry& entry) {
    switch (entry.use) {
    case ProfileUse::base:
    case ProfileUse::baseCap:
    case ProfileUse::shoe:
    case ProfileUse::crown:
    case ProfileUse::chairRail:
        return Joint::coped;
    case ProfileUse::board:
    case ProfileUse::cleat:
    case ProfileUse::shelf:
    case ProfileUse::rod:
        return Joint::butted;
    default:
        return Joint::mitered;
    }
}

/// The plain shape nearest to what the moulding is run like.
Section sectionOf(const Entry& entry) {
    switch (entry.use) {
    case ProfileUse::casing:
    case ProfileUse::base:
    case ProfileUse::baseCap:
    case ProfileUse::crown:
    case ProfileUse::chairRail:
        return Section::ogee;
    case ProfileUse::shoe:
        return Section::quarterRound;
    case ProfileUse::stool:
        return Section::bullnose;
    case ProfileUse::stop:
        return Section::beveled;
    case ProfileUse::backBand:
        return Section::stepped;
    case ProfileUse::rod:
    case ProfileUse::handrail:
        return Section::round;
    case ProfileUse::shelf:
        return Section::easedEdge;
    default:
        return Section::squareEdge;
    }
}

/// Long sticks carry a small premium; yards price by the nickel.
Money stickPrice(const Entry& entry, int feet) {
    const std::int64_t premium = feet >= 16 ? 105 : 100;
    return Money::cents(
        roundedQuotient(Wide(entry.centsPerFoot) * feet * premium, Wide(100) * 5) * 5);
}

void add(PriceBook& book, IdSource& ids, const Entry& entry) {
    Profile profile;
    profile.id = ids.next<Profile>();
    profile.name = entry.name;
    profile.use = entry.use;
    profile.thickness = Length::sixteenths(entry.thickness);
    profile.width = Length::sixteenths(entry.width);
    profile.material = entry.material.name;
    profile.finish = entry.material.finish;
    profile.hardwood = entry.material.hardwood;
    profile.springAngle = Angle::degrees(entry.spring);
    profile.joint = jointOf(entry);
    profile.symmetric = entry.symmetric;
    profile.origin = Origin::starter;
    profile.note = verify;
    profile.section = sectionOf(entry);
    for (const int feet : entry.feet)
        book.of<Stick>().put({ids.next<Stick>(), profile.id, Length::feet(feet),
            stickPrice(entry, feet), true, Origin::starter});
    book.of<Profile>().put(std::move(profile));
}

} // namespace

void addStarterProfiles(PriceBook& book, IdSource& ids) {
    for (const Entry& entry : mouldings)
        add(book, ids, entry);
    for (const Entry& entry : boards)
        add(book, ids, entry);
}

} // namespace miterbook
