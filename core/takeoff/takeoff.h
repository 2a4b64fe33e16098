// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/quantity.h"
#include "book/condition.h"
#include "book/part.h"
#include "book/piece_of_work.h"
#include "book/price_book.h"
#include "book/task.h"
#include "plan/whole_plan.h"

#include <string>
#include <variant>
#include <vector>

namespace miterbook {

/// The row of the plan that a number comes from; the plan itself for trips and the like.
using Origins = std::variant<Id<Plan>, Id<Room>, Id<Opening>, Id<Closet>, Id<Stair>,
    Id<WallTreatment>, Id<OtherWork>>;

/// Where a number comes from: the row, its level, and what the user calls it ("W4", "Great room").
struct Source {
    Origins row;
    Id<Level> level;
    Id<Room> room; ///< none where it belongs to no room
    std::string name;

    bool operator==(const Source&) const = default;
};

/// How an end of a piece is cut. square: 0 degrees. miter: at the piece's saw angle. cope: cut
/// square, then coped. splice: scarfed to the next piece.
enum class EndCut { square, miter, cope, splice };

template <>
struct Words<EndCut> {
    static constexpr std::array list{
        Word{EndCut::square, "square"},
        Word{EndCut::miter, "miter"},
        Word{EndCut::cope, "cope"},
        Word{EndCut::splice, "splice"},
    };
};

struct PieceEnd {
    EndCut cut = EndCut::square;
    double sawAngle = 0; ///< degrees from square; 45 for a rectangle's corner
    double bevel = 0;    ///< degrees; not 0 for crown cut flat

    bool operator==(const PieceEnd&) const = default;
};

/// One piece of a profile to be cut, `count` times alike.
struct Piece {
    PieceOfWork work = PieceOfWork::windows;
    Source source;
    Id<Profile> profile;
    std::string part;  ///< "head", "left leg", "stool", "base, wall 2"
    Length shortPoint; ///< equal to longPoint when no end is mitered
    Length longPoint;  ///< what it takes out of a stick, before kerf
    PieceEnd left;
    PieceEnd right;
    int count = 1;

    bool operator==(const Piece&) const = default;
};

/// An amount of one task from one source.
struct TaskCount {
    PieceOfWork work = PieceOfWork::doors;
    Task task = Task::other;
    Quantity quantity; ///< in unitOf(task)
    Conditions conditions;
    Source source;
    std::string what; ///< how it was counted: "2 sides of 83 3/8 over 5 ft"

    bool operator==(const TaskCount&) const = default;
};

/// Goods by the each from one source.
struct PartCount {
    PieceOfWork work = PieceOfWork::hardware;
    PartUse use = PartUse::other;
    int count = 1;
    Source source;

    bool operator==(const PartCount&) const = default;
};

/// Goods bought outright for one source, at a price said in the plan.
struct BoughtGoods {
    PieceOfWork work = PieceOfWork::extras;
    Money cost;
    Source source;

    bool operator==(const BoughtGoods&) const = default;
};

/// Something the user should know about a row: a missing profile, a spliced wall, a leg that does
/// not come out of a stick. A problem keeps a number from being right; a warning does not.
struct Remark {
    enum class Weight { warning, problem };
    Weight weight = Weight::warning;
    Source source;
    std::string sentence;

    bool operator==(const Remark&) const = default;
};

/// Corners of the runs of one profile in one room.
struct RunCorners {
    PieceOfWork work = PieceOfWork::base;
    Source source;
    Id<Profile> profile;
    int inside = 0;
    int outside = 0;
    int splices = 0;
    Length net; ///< running length before splice and waste

    bool operator==(const RunCorners&) const = default;
};

/// Everything a plan takes, each number with its source. In plan order.
struct Takeoff {
    std::vector<Piece> pieces;
    std::vector<RunCorners> runs;
    std::vector<TaskCount> tasks;
    std::vector<PartCount> parts;
    std::vector<BoughtGoods> goods;
    std::vector<Remark> remarks;

    bool operator==(const Takeoff&) const = default;
};

/// The takeoff of a whole plan with the shop's practice and profiles. Pure; never fails: what
/// cannot be counted is left out and said in a remark. `trips` adds that many trips.
Takeoff takeOff(const WholePlan& plan, const PriceBook& prices, int trips);

/// Running feet of a profile in the takeoff: the long points of all its pieces.
Length runningLength(const Takeoff& takeoff, Id<Profile> profile);

/// Pieces alike in profile and length, gathered for cutting: longest first, ties by profile.
struct StickNeed {
    struct Lot {
        Length length; ///< long point
        int count = 0;

        bool operator==(const Lot&) const = default;
    };
    Id<Profile> profile;
    bool mitered = false; ///< any end is mitered: the kerf is taken at 45 degrees
    std::vector<Lot> lots;
    /// Running length by piece of work, to share the profile's cost fairly.
    std::vector<std::pair<PieceOfWork, Length>> byWork;

    bool operator==(const StickNeed&) const = default;
};

/// What the takeoff needs of each profile, in profile id order.
std::vector<StickNeed> stickNeeds(const Takeoff& takeoff);

} // namespace miterbook
