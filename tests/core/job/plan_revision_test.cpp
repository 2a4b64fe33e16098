// SPDX-License-Identifier: GPL-3.0-or-later
// What a house is told when its builder revises the plan, and that it takes what it wants.
#include "job/plan_revision.h"

#include "job/plan_stamp.h"
#include "job/start_house.h"
#include "support/small_book.h"

#include <gmock/gmock.h>

#include <algorithm>

using namespace miterbook;
using testing::ElementsAre;
using testing::HasSubstr;

namespace {

const Id<Plan> aspenRevised(31);
using RevisionKind = PlanRevision::Kind;

/// A house of the plan "Aspen" as it was started.
struct Started {
    Started() {
        HouseStart start;
        start.plan = aspenRevised;
        start.name = "Lot 14";
        const auto edit = startHouse(book, ids, start);
        EXPECT_TRUE(edit) << (edit ? "" : edit.error().sentence);
        apply(book, *edit);
        house = book.jobs.of<House>().begin()->first;
        work = book.house(house)->work;
    }
    std::vector<PlanRevision> revisions() const { return revisionsFor(book, house); }
    std::vector<std::string> sentences() const {
        std::vector<std::string> all;
        for (const PlanRevision& each : revisions())
            all.push_back(sentenceOf(each));
        return all;
    }
    template <class Row>
    Row row(Id<Plan> plan, const std::string& mark) const {
        for (const auto& [id, each] : book.sheet(plan).of<Row>()) {
            if constexpr (requires { each.mark; }) {
                if (each.mark == mark)
                    return each;
            }
            if constexpr (requires { each.name; }) {
                if (each.name == mark)
                    return each;
            }
        }
        ADD_FAILURE() << mark << " is not there";
        return {};
    }
    bool has(const std::string& mark) const {
        const auto& openings = book.sheet(work).of<Opening>();
        return std::ranges::any_of(
            openings, [&](const auto& each) { return each.second.mark == mark; });
    }
    /// The builder revises his window.
    void widen(const std::string& mark, Length width) {
        Opening opening = row<Opening>(aspenRevised, mark);
        opening.width = width;
        book.sheets[aspenRevised].of<Opening>().put(opening);
    }
    Opening addWindow(const std::string& mark, Id<Room> room = {}) {
        Opening opening = row<Opening>(aspenRevised, "W1");
        opening.id = ids.next<Opening>();
        opening.mark = mark;
        opening.room = room;
        book.sheets[aspenRevised].of<Opening>().put(opening);
        return opening;
    }
    void take(const std::vector<PlanRevision>& taken, const std::vector<PlanRevision>& kept = {}) {
        last = revisionEdit(book, ids, house, taken, kept);
        ASSERT_TRUE(check(book, last));
        apply(book, last);
    }

    Book book = smallBook();
    IdSource ids{9000};
    Id<House> house;
    Id<Plan> work;
    Edit last;
};

} // namespace

TEST(PlanRevision, IsNoneForAPlanAsItWas) {
    const Started started;
    EXPECT_THAT(started.sentences(), ElementsAre());
    EXPECT_EQ(revisionEdit(started.book, const_cast<IdSource&>(started.ids), started.house, {}, {}),
        (Edit{"Take over the revised plan", {}}));
}

TEST(PlanRevision, SaysWhatWasChangedAndTakesIt) {
    Started started;
    started.widen("W1", Length::inches(40));
    const auto revisions = started.revisions();
    ASSERT_EQ(revisions.size(), 1U);
    EXPECT_EQ(revisions[0].kind, RevisionKind::changed);
    EXPECT_EQ(revisions[0].what, "opening \"W1\"");
    ASSERT_EQ(revisions[0].differences.size(), 1U);
    EXPECT_EQ(revisions[0].differences[0].field, "width");
    EXPECT_EQ(revisions[0].differences[0].plan, "40\"");
    EXPECT_THAT(sentenceOf(revisions[0]), HasSubstr("in the house, 40\" in the plan"));
    const Opening before = started.row<Opening>(started.work, "W1");
    started.take(revisions);
    const Opening after = started.row<Opening>(started.work, "W1");
    EXPECT_EQ(after.id, before.id) << "what was measured and cut stays with it";
    EXPECT_EQ(after.width, Length::inches(40));
    EXPECT_EQ(after.position, before.position);
    EXPECT_THAT(started.sentences(), ElementsAre());
    apply(started.book, inverse(started.last));
    EXPECT_EQ(started.revisions(), revisions) << "undone, it is offered again";
}

TEST(PlanRevision, IsNotAskedAgainWhereTheHouseKeepsItsOwn) {
    Started started;
    started.widen("W1", Length::inches(40));
    started.take({}, started.revisions());
    EXPECT_EQ(started.last.sentence, "Keep the house as it is");
    EXPECT_THAT(started.sentences(), ElementsAre());
    EXPECT_NE(started.row<Opening>(started.work, "W1").width, Length::inches(40));
    started.widen("W1", Length::inches(41));
    EXPECT_EQ(started.revisions().size(), 1U) << "the plan was revised once more";
}

TEST(PlanRevision, LeavesAloneWhatTheHouseItselfChanged) {
    Started started;
    Opening own = started.row<Opening>(started.work, "W1");
    own.width = Length::inches(29);
    started.book.sheets[started.work].of<Opening>().put(own);
    EXPECT_THAT(started.sentences(), ElementsAre());
    // The house already has what the builder comes to: nothing is to be done.
    started.widen("W1", Length::inches(29));
    EXPECT_THAT(started.sentences(), ElementsAre());
}

TEST(PlanRevision, AddsARoomAndWhatStandsInIt) {
    Started started;
    Room den = started.row<Room>(
        aspenRevised, started.book.sheet(aspenRevised).of<Room>().begin()->second.name);
    den.id = started.ids.next<Room>();
    den.name = "Den";
    started.book.sheets[aspenRevised].of<Room>().put(den);
    started.addWindow("W7", den.id);
    const auto revisions = started.revisions();
    ASSERT_EQ(revisions.size(), 2U);
    EXPECT_EQ(sentenceOf(revisions[0]), "room \"Den\" is new in the plan");
    EXPECT_EQ(revisions[1].kind, RevisionKind::added);
    started.take(revisions);
    const Opening window = started.row<Opening>(started.work, "W7");
    EXPECT_EQ(window.room, started.row<Room>(started.work, "Den").id) << "in the house's own room";
    EXPECT_EQ(window.plan, started.work);
    EXPECT_THAT(started.sentences(), ElementsAre());
}

TEST(PlanRevision, DoesWithoutWhatIsRefused) {
    Started started;
    started.addWindow("W7");
    started.addWindow("W8");
    const auto revisions = started.revisions();
    ASSERT_EQ(revisions.size(), 2U);
    started.take({revisions[1]}, {revisions[0]});
    EXPECT_EQ(started.has("W7"), revisions[1].what == "opening \"W7\"");
    EXPECT_NE(started.has("W7"), started.has("W8"));
    EXPECT_THAT(started.sentences(), ElementsAre());
}

TEST(PlanRevision, TakesAwayWithItsMeasureOrKeepsItAsTheHousesOwn) {
    for (const bool takes : {true, false}) {
        Started started;
        const Opening own = started.row<Opening>(started.work, "W2");
        Measure measure;
        measure.id = Id<Measure>(800);
        measure.plan = started.work;
        measure.opening = own.id;
        started.book.sheets[started.work].of<Measure>().put(measure);
        started.book.sheets[aspenRevised].of<Opening>().erase(
            started.row<Opening>(aspenRevised, "W2").id);
        const auto revisions = started.revisions();
        ASSERT_EQ(revisions.size(), 1U);
        EXPECT_EQ(sentenceOf(revisions[0]), "opening \"W2\" is no longer in the plan");
        if (takes)
            started.take(revisions);
        else
            started.take({}, revisions);
        EXPECT_EQ(started.has("W2"), !takes);
        EXPECT_EQ(started.book.sheet(started.work).of<Measure>().size(), takes ? 0U : 1U);
        EXPECT_THAT(started.sentences(), ElementsAre());
    }
}

TEST(PlanRevision, LeavesNothingInARoomThatWent) {
    Started started;
    const Room room = started.book.sheet(aspenRevised).of<Room>().begin()->second;
    started.addWindow("W7", room.id);
    started.take(started.revisions());
    Opening window = started.row<Opening>(aspenRevised, "W7");
    window.room = {};
    started.book.sheets[aspenRevised].of<Opening>().put(window);
    started.book.sheets[aspenRevised].of<Room>().erase(room.id);
    std::vector<PlanRevision> onlyRoom = started.revisions();
    std::erase_if(
        onlyRoom, [](const PlanRevision& each) { return each.kind != RevisionKind::removed; });
    ASSERT_EQ(onlyRoom.size(), 1U);
    started.take(onlyRoom);
    EXPECT_TRUE(started.book.sheet(started.work).of<Room>().empty());
    EXPECT_FALSE(started.row<Opening>(started.work, "W7").room);
}

TEST(PlanRevision, ComparesAnOlderHouseByNames) {
    Started started;
    started.book.sheets[started.work].of<PlanTie>() = {};
    EXPECT_THAT(started.sentences(), ElementsAre());
    started.widen("W1", Length::inches(40));
    started.addWindow("W7");
    const auto revisions = started.revisions();
    ASSERT_EQ(revisions.size(), 2U);
    EXPECT_EQ(revisions[0].what, "opening \"W1\"");
    EXPECT_EQ(revisions[1].what, "opening \"W7\"");
    started.take({revisions[0]}, {revisions[1]});
    EXPECT_EQ(started.row<Opening>(started.work, "W1").width, Length::inches(40));
    EXPECT_FALSE(started.book.sheet(started.work).of<PlanTie>().empty()) << "tied from now on";
    EXPECT_THAT(started.sentences(), ElementsAre());
}

TEST(PlanRevision, NeedsBothPlansOpen) {
    Started started;
    started.widen("W1", Length::inches(40));
    started.book.sheets.erase(aspenRevised);
    EXPECT_THAT(started.sentences(), ElementsAre());
    EXPECT_THAT(revisionsFor(started.book, Id<House>(4711)), ElementsAre());
}

TEST(PlanStamp, SaysWhatIsBuiltAndNotWhere) {
    Opening opening;
    opening.width = Length::inches(36);
    const std::int64_t stamp = stampOf(opening);
    Opening moved = opening;
    moved.id = Id<Opening>(7);
    moved.plan = Id<Plan>(8);
    moved.position = 9;
    moved.variant = Id<Variant>(3);
    EXPECT_EQ(stampOf(moved), stamp);
    moved.height = Length::inches(1);
    EXPECT_NE(stampOf(moved), stamp);
    // FNV-1a of "a", 64 bits [pub: draft-eastlake-fnv].
    EXPECT_EQ(static_cast<std::uint64_t>(stampOf(std::string_view("a"))), 0xaf63dc4c8601ec8cU);
    EXPECT_EQ(static_cast<std::uint64_t>(stampOf(std::string_view(""))), 0xcbf29ce484222325U);
}
