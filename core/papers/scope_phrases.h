// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/task.h"

#include <array>
#include <string_view>

namespace miterbook {

/// How a task is said. One that a builder does not buy by itself (a long side) is in neither list.
struct Phrase {
    Task task;
    std::string_view one;
    std::string_view many;
};

inline constexpr std::array doorPhrases{
    Phrase{Task::prehungDoor, "prehung door", "prehung"},
    Phrase{Task::doubleDoor, "double door", "double"},
    Phrase{Task::bifoldOrBypassDoor, "bifold or bypass door", "bifold or bypass"},
    Phrase{Task::pocketDoor, "pocket door", "pocket"},
    Phrase{Task::exteriorDoor, "exterior door, inside casing", "exterior (inside casing)"},
};

inline constexpr std::array windowPhrases{
    Phrase{Task::pictureFrameWindow, "picture frame", "picture frame"},
    Phrase{Task::threeSidedWindow, "three-sided", "three-sided"},
    Phrase{Task::stoolAndApronWindow, "stool and apron", "stool and apron"},
    Phrase{Task::buttedHeadWindow, "butted head", "butted head"},
    Phrase{Task::drywallReturnStool, "stool in a drywall return", "stool in a drywall return"},
};

/// Counted or measured one beside the other; neighbours with the same words are added up.
inline constexpr std::array otherPhrases{
    Phrase{Task::casedOpening, "cased opening", "cased openings"},
    Phrase{Task::mullCasing, "mull casing", "mull casings"},
    Phrase{Task::jambExtension, "jamb extension", "jamb extensions"},
    Phrase{Task::base, "base", "base"},
    Phrase{Task::shoe, "shoe", "shoe"},
    Phrase{Task::smallCrown, "crown", "crown"},
    Phrase{Task::mediumCrown, "crown", "crown"},
    Phrase{Task::largeCrown, "crown", "crown"},
    Phrase{Task::chairRail, "chair rail or cap", "chair rail or cap"},
    Phrase{Task::shiplap, "shiplap", "shiplap"},
    Phrase{Task::boardAndBatten, "board and batten", "board and batten"},
    Phrase{Task::wainscot, "wainscot", "wainscot"},
    Phrase{Task::shelfAndRod, "shelf and rod", "shelf and rod"},
    Phrase{Task::closetShelf, "pantry or linen shelf", "pantry or linen shelves"},
    Phrase{Task::closedSkirt, "closed stair skirt", "closed stair skirts"},
    Phrase{Task::openSkirt, "open stair skirt", "open stair skirts"},
    Phrase{Task::treadsAndRisers, "flight of treads and risers", "flights of treads and risers"},
    Phrase{Task::railPostToPost, "post-to-post rail", "post-to-post rail"},
    Phrase{Task::railOverPost, "over-the-post rail", "over-the-post rail"},
    Phrase{Task::newel, "newel", "newels"},
    Phrase{Task::baluster, "baluster", "balusters"},
    Phrase{Task::halfWallCap, "half-wall cap", "half-wall cap"},
    Phrase{Task::atticAccess, "attic access", "attic accesses"},
    Phrase{Task::mantel, "mantel", "mantels"},
    Phrase{Task::lockset, "passage or privacy set", "passage or privacy sets"},
    Phrase{Task::deadbolt, "deadbolt", "deadbolts"},
    Phrase{Task::doorStop, "door stop", "door stops"},
    Phrase{Task::trip, "trip, set-up and clean-up", "trips, set-up and clean-up"},
};

} // namespace miterbook
