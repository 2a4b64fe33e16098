// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/quantity.h"
#include "basics/words.h"
#include "book/piece_of_work.h"

namespace miterbook {

/// One kind of labour that the takeoff counts; its rate (minutes a unit) is in the book.
enum class Task {
    prehungDoor,
    doubleDoor,
    bifoldOrBypassDoor,
    pocketDoor,
    exteriorDoor,
    casedOpening,
    pictureFrameWindow,
    threeSidedWindow,
    stoolAndApronWindow,
    buttedHeadWindow,
    drywallReturnStool,
    longSide,
    nonSquareCorner,
    mullCasing,
    jambExtension,
    base,
    shoe,
    smallCrown,
    mediumCrown,
    largeCrown,
    chairRail,
    shiplap,
    boardAndBatten,
    wainscot,
    shelfAndRod,
    closetShelf,
    closedSkirt,
    openSkirt,
    treadsAndRisers,
    railPostToPost,
    railOverPost,
    newel,
    baluster,
    halfWallCap,
    atticAccess,
    mantel,
    lockset,
    deadbolt,
    doorStop,
    trip,
    punch,
    other,
};

template <>
struct Words<Task> {
    static constexpr std::array list{
        Word{Task::prehungDoor, "prehung door"},
        Word{Task::doubleDoor, "double door"},
        Word{Task::bifoldOrBypassDoor, "bifold or bypass door"},
        Word{Task::pocketDoor, "pocket door"},
        Word{Task::exteriorDoor, "exterior door, inside casing"},
        Word{Task::casedOpening, "cased opening"},
        Word{Task::pictureFrameWindow, "window, picture frame"},
        Word{Task::threeSidedWindow, "window, three-sided"},
        Word{Task::stoolAndApronWindow, "window, stool and apron"},
        Word{Task::buttedHeadWindow, "window, butted head"},
        Word{Task::drywallReturnStool, "window, drywall return"},
        Word{Task::longSide, "casing side over 5 ft"},
        Word{Task::nonSquareCorner, "corner not square"},
        Word{Task::mullCasing, "mull casing"},
        Word{Task::jambExtension, "jamb extension"},
        Word{Task::base, "base, one piece"},
        Word{Task::shoe, "shoe or quarter round"},
        Word{Task::smallCrown, "crown to 2 1/4"},
        Word{Task::mediumCrown, "crown to 3 1/2"},
        Word{Task::largeCrown, "crown over 3 1/2 or built up"},
        Word{Task::chairRail, "chair rail or cap"},
        Word{Task::shiplap, "shiplap"},
        Word{Task::boardAndBatten, "board and batten"},
        Word{Task::wainscot, "wainscot"},
        Word{Task::shelfAndRod, "shelf and rod"},
        Word{Task::closetShelf, "pantry or linen shelf"},
        Word{Task::closedSkirt, "stair skirt, closed"},
        Word{Task::openSkirt, "stair skirt, open"},
        Word{Task::treadsAndRisers, "treads and risers"},
        Word{Task::railPostToPost, "rail, post to post"},
        Word{Task::railOverPost, "rail, over the post"},
        Word{Task::newel, "newel"},
        Word{Task::baluster, "baluster"},
        Word{Task::halfWallCap, "half-wall cap"},
        Word{Task::atticAccess, "attic access"},
        Word{Task::mantel, "mantel"},
        Word{Task::lockset, "passage or privacy set"},
        Word{Task::deadbolt, "deadbolt"},
        Word{Task::doorStop, "door stop"},
        Word{Task::trip, "trip, set-up and clean-up"},
        Word{Task::punch, "punch list"},
        Word{Task::other, "other work"},
    };
};

/// The unit in which a task is counted.
Unit unitOf(Task task);

/// The piece of work a task belongs to unless its source says otherwise.
PieceOfWork pieceOfWork(Task task);

} // namespace miterbook
