// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/scope_words.h"

#include <gtest/gtest.h>

using namespace miterbook;

namespace {

/// A job of openings and tasks put together by hand.
struct ScopeJob {
    JobFigures figures;
    PriceBook prices;

    Source opening(int id, int count, OpeningKind kind, int sides = 1) {
        Opening row;
        row.id = Id<Opening>(id);
        row.count = count;
        row.kind = kind;
        row.sidesCased = sides;
        row.style = TrimStyle::threeSided;
        figures.whole.openings.push_back(row);
        return {row.id, {}, {}, "O" + std::to_string(id)};
    }
    void task(PieceOfWork work, Task task, Quantity quantity, Source source = {}) {
        figures.takeoff.tasks.push_back({work, task, quantity, {}, std::move(source), {}});
    }
    std::string words(PieceOfWork work) const { return scopeWords(work, figures, prices); }
};

Quantity count(int n) {
    return Quantity::count(n);
}

} // namespace

TEST(ScopeWords, WindowsBySeveralStylesMostFirst) {
    ScopeJob job;
    job.task(PieceOfWork::windows, Task::pictureFrameWindow, count(6));
    job.task(PieceOfWork::windows, Task::stoolAndApronWindow, count(12));
    EXPECT_EQ(
        job.words(PieceOfWork::windows), "18 windows cased: stool and apron 12, picture frame 6");
}

TEST(ScopeWords, WindowsOfOneStyle) {
    ScopeJob job;
    job.task(PieceOfWork::windows, Task::pictureFrameWindow, count(1));
    EXPECT_EQ(job.words(PieceOfWork::windows), "1 window cased, picture frame");
}

TEST(ScopeWords, AWindowCasedOnBothFacesIsOneWindow) {
    ScopeJob job;
    job.task(PieceOfWork::windows, Task::pictureFrameWindow, count(4),
        job.opening(1, 2, OpeningKind::window, 2));
    EXPECT_EQ(job.words(PieceOfWork::windows), "2 windows cased, picture frame");
}

TEST(ScopeWords, DrywallReturnsAreNotCased) {
    ScopeJob job;
    job.task(PieceOfWork::windows, Task::drywallReturnStool, count(3));
    EXPECT_EQ(job.words(PieceOfWork::windows), "3 windows trimmed, stool in a drywall return");
}

TEST(ScopeWords, DoorsWithTheirSides) {
    ScopeJob job;
    job.task(PieceOfWork::doors, Task::prehungDoor, count(5),
        job.opening(1, 5, OpeningKind::prehungDoor, 2));
    job.task(PieceOfWork::doors, Task::exteriorDoor, count(1),
        job.opening(2, 1, OpeningKind::exteriorDoor));
    job.task(PieceOfWork::doors, Task::casedOpening, count(2),
        job.opening(3, 2, OpeningKind::casedOpening, 2));
    EXPECT_EQ(job.words(PieceOfWork::doors),
        "6 doors: prehung 5, exterior (inside casing) 1; 5 cased both sides, 1 cased one side; 2 "
        "cased openings");
}

TEST(ScopeWords, DoorsOfOneKind) {
    ScopeJob job;
    job.task(PieceOfWork::doors, Task::pocketDoor, count(2));
    EXPECT_EQ(job.words(PieceOfWork::doors), "2 pocket doors");
    ScopeJob one;
    one.task(PieceOfWork::doors, Task::exteriorDoor, count(1));
    EXPECT_EQ(one.words(PieceOfWork::doors), "1 exterior door, inside casing");
}

TEST(ScopeWords, RunsInWholeFeet) {
    ScopeJob job;
    job.task(PieceOfWork::base, Task::base, Quantity::thousandths(400'250));
    job.task(PieceOfWork::base, Task::base, Quantity::thousandths(254'500));
    job.task(PieceOfWork::base, Task::shoe, Quantity::thousandths(654'400));
    EXPECT_EQ(job.words(PieceOfWork::base), "655 ft of base, 654 ft of shoe");
}

TEST(ScopeWords, CrownOfAllSizesIsCrown) {
    ScopeJob job;
    job.task(PieceOfWork::crown, Task::mediumCrown, count(100));
    job.task(PieceOfWork::crown, Task::largeCrown, count(50));
    EXPECT_EQ(job.words(PieceOfWork::crown), "150 ft of crown");
}

TEST(ScopeWords, OneAndMany) {
    ScopeJob job;
    job.task(PieceOfWork::closets, Task::closetShelf, count(1));
    job.task(PieceOfWork::stairs, Task::newel, count(2));
    job.task(PieceOfWork::stairs, Task::treadsAndRisers, count(1));
    EXPECT_EQ(job.words(PieceOfWork::closets), "1 pantry or linen shelf");
    EXPECT_EQ(job.words(PieceOfWork::stairs), "1 flight of treads and risers, 2 newels");
}

TEST(ScopeWords, WorkInHoursIsSaidByName) {
    ScopeJob job;
    job.task(PieceOfWork::extras, Task::other, Quantity::thousandths(7'130),
        {Id<OtherWork>(1), {}, {}, "Window bench"});
    job.task(PieceOfWork::punch, Task::punch, Quantity::thousandths(6'250), {});
    EXPECT_EQ(job.words(PieceOfWork::extras), "Window bench");
    EXPECT_EQ(job.words(PieceOfWork::punch), "Punch list");
}

TEST(ScopeWords, SaysWhatTheBuilderSupplies) {
    ScopeJob job;
    job.prices.of<Part>().put(
        {Id<Part>(1), "Set", PartUse::passageSet, Money(), true, Origin::shop});
    job.task(PieceOfWork::hardware, Task::lockset, count(14));
    job.figures.takeoff.parts.push_back({PieceOfWork::hardware, PartUse::passageSet, 14, {}});
    EXPECT_EQ(job.words(PieceOfWork::hardware),
        "14 passage or privacy sets, supplied by the builder: passage set");
}

TEST(ScopeWords, LabourThatNobodyBuysIsNotSaid) {
    ScopeJob job;
    job.task(PieceOfWork::windows, Task::stoolAndApronWindow, count(2));
    job.task(PieceOfWork::windows, Task::longSide, count(4));
    job.task(PieceOfWork::windows, Task::nonSquareCorner, count(2));
    job.figures.takeoff.parts.push_back({PieceOfWork::windows, PartUse::archCasing, 1, {}});
    EXPECT_EQ(job.words(PieceOfWork::windows),
        "2 windows cased, stool and apron; 1 arched casing made to order");
}

TEST(ScopeWords, GoodsAloneAreSaidByWhatTheyAreFor) {
    ScopeJob job;
    job.figures.takeoff.goods.push_back(
        {PieceOfWork::builtIns, Money::dollars(410), {Id<OtherWork>(1), {}, {}, "Mantel kit"}});
    EXPECT_EQ(job.words(PieceOfWork::builtIns), "Mantel kit");
    EXPECT_EQ(job.words(PieceOfWork::stairs), "");
}
