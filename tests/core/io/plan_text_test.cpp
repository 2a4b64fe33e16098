// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/plan_text.h"

#include "plan_compare.h"
#include "random_plan.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace miterbook {

namespace {

using ::testing::HasSubstr;
using ::testing::Not;

/// A book into which texts are brought.
struct OtherBook {
    Book book;
    IdSource ids{5000};

    Id<Plan> bring(const std::string& text) {
        const auto edit = readPlanText(book, ids, text);
        EXPECT_TRUE(edit.ok()) << (edit ? "" : edit.error().sentence);
        if (!edit)
            return {};
        EXPECT_TRUE(check(book, *edit).ok());
        EXPECT_TRUE(checkRows(book, *edit).ok()) << checkRows(book, *edit).error().sentence;
        apply(book, *edit);
        return std::prev(book.jobs.of<Plan>().end())->first;
    }
};

TEST(PlanText, RoundTripLosesNothing) {
    for (unsigned seed = 1; seed <= 150; ++seed) {
        BookFixture from;
        const Id<Plan> plan = RandomPlan(from, seed).make();
        const std::string text = writePlanText(from.book, plan);
        OtherBook to;
        const Id<Plan> brought = to.bring(text);
        ASSERT_TRUE(brought) << seed << "\n" << text;
        ASSERT_EQ(differenceOf(from.book, plan, to.book, brought), "") << seed << "\n" << text;
        ASSERT_EQ(writePlanText(to.book, brought), text) << seed;
    }
}

TEST(PlanText, ComparingPlansSeesEveryField) {
    BookFixture from;
    const Id<Plan> plan = RandomPlan(from, 12).make();
    OtherBook to;
    const Id<Plan> brought = to.bring(writePlanText(from.book, plan));
    PlanRows& rows = to.book.sheets[brought];
    ASSERT_FALSE(rows.of<Opening>().empty());
    Opening opening = rows.of<Opening>().begin()->second;
    opening.flooring += Length::nanometres(1);
    rows.of<Opening>().put(opening);
    EXPECT_THAT(differenceOf(from.book, plan, to.book, brought), HasSubstr("flooring"));
}

TEST(PlanText, BringsProfilesWithTheirSticks) {
    BookFixture from;
    Plan plan = *from.book.plan(from.plan);
    plan.base = from.profile("Tall base");
    from.book.jobs.of<Plan>().put(plan);
    from.book.prices.of<Stick>().put({from.ids.next<Stick>(), plan.base, Length::feet(12),
        Money::cents(1234), false, Origin::learned});
    OtherBook to;
    const Id<Plan> brought = to.bring(writePlanText(from.book, from.plan));
    ASSERT_EQ(to.book.prices.of<Profile>().size(), 1U) << "only what the plan uses";
    const Profile& profile = to.book.prices.of<Profile>().begin()->second;
    EXPECT_EQ(profile.name, "Tall base");
    EXPECT_EQ(profile.width, Length::sixteenths(84));
    EXPECT_EQ(to.book.plan(brought)->base, profile.id);
    const Stick& stick = to.book.prices.of<Stick>().begin()->second;
    EXPECT_EQ(stick.profile, profile.id);
    EXPECT_EQ(stick.price, Money::cents(1234));
    EXPECT_FALSE(stick.stocked);
    EXPECT_EQ(stick.origin, Origin::learned);
}

TEST(PlanText, UsesWhatTheBookHas) {
    BookFixture from;
    Plan plan = *from.book.plan(from.plan);
    plan.base = from.profile("Tall base");
    from.book.jobs.of<Plan>().put(plan);
    const std::string text = writePlanText(from.book, from.plan);
    BookFixture to;
    to.book.jobs.of<Plan>().erase(to.plan);
    const auto edit = readPlanText(to.book, to.ids, text);
    ASSERT_TRUE(edit.ok()) << edit.error().sentence;
    EXPECT_EQ(edit->sentence, "Bring in plan Larkspur");
    apply(to.book, *edit);
    EXPECT_EQ(to.book.prices.of<Builder>().size(), 1U);
    EXPECT_EQ(to.book.jobs.of<PlanSet>().size(), 1U);
    EXPECT_EQ(to.book.prices.of<Profile>().size(), 9U);
    EXPECT_EQ(to.book.jobs.of<Plan>().begin()->second.base, to.profile("Tall base"));
}

TEST(PlanText, RefusesAPlanThatIsThere) {
    BookFixture from;
    const auto edit = readPlanText(from.book, from.ids, writePlanText(from.book, from.plan));
    ASSERT_FALSE(edit.ok());
    EXPECT_EQ(edit.error().fault, Fault::conflict);
    EXPECT_THAT(edit.error().sentence, HasSubstr("a plan Larkspur already"));
}

TEST(PlanText, HoldsNoIds) {
    BookFixture low;
    BookFixture high;
    high.ids.skipTo(900'000);
    const Id<Plan> a = RandomPlan(low, 3).make();
    const Id<Plan> b = RandomPlan(high, 3).make();
    Plan renamed = *high.book.plan(b);
    renamed.name = low.book.plan(a)->name;
    high.book.jobs.of<Plan>().put(renamed);
    EXPECT_EQ(writePlanText(low.book, a), writePlanText(high.book, b));
}

TEST(PlanText, AHousesCopyIsWrittenWithItsBuilder) {
    BookFixture from;
    House house;
    house.id = from.ids.next<House>();
    house.plan = from.plan;
    Plan copy = *from.book.plan(from.plan);
    copy.id = house.work = from.ids.next<Plan>();
    copy.set = {};
    copy.house = house.id;
    from.book.jobs.of<House>().put(house);
    from.book.jobs.of<Plan>().put(copy);
    from.book.sheets[copy.id];
    const std::string text = writePlanText(from.book, copy.id);
    EXPECT_THAT(text, HasSubstr("Hollis Homes"));
    EXPECT_THAT(text, HasSubstr("Creekside"));
}

TEST(PlanText, IsReadByPeople) {
    BookFixture from;
    Opening window;
    window.mark = "W1";
    window.room = from.kitchen;
    window.level = from.main;
    window.width = Length::sixteenths(568);
    window.height = Length::inches(60);
    window.position = 1;
    const Id<Opening> plain = from.put(window);
    Variant variant;
    variant.name = "B";
    variant.kind = VariantKind::elevation;
    window.variant = from.put(variant);
    window.replaces = plain;
    window.height = Length::inches(48);
    from.put(window);
    const std::string text = writePlanText(from.book, from.plan);
    EXPECT_THAT(text,
        HasSubstr("\n    {\"mark\": \"W1\", \"level\": \"Main\", \"room\": \"Kitchen\", "
                  "\"width\": \"35 1/2\", \"height\": \"60\"}\n"));
    EXPECT_THAT(text,
        HasSubstr("\n    {\"name\": \"B\", \"openings\": [{\"changes\": \"W1\", "
                  "\"height\": \"48\"}]}\n"));
    EXPECT_THAT(text, HasSubstr("\"walls\": \"10' x 10'\""));
    EXPECT_THAT(text, Not(HasSubstr("position")));
}

TEST(PlanText, TakesEntriesInAnyOrder) {
    OtherBook to;
    const Id<Plan> plan = to.bring(R"({"openings": [{"mark": "W1", "room": "Loft", "count": 2}],
        "options": [{"name": "Loft", "rooms": [{"name": "Loft", "walls": "10 x 12"}],
                     "openings": [{"removes": "W1"}]}],
        "plan": {"name": "P"}, "version": 1, "miterbook": "plan"})");
    const PlanRows& rows = to.book.sheet(plan);
    EXPECT_EQ(rows.of<Opening>().begin()->second.room, rows.of<Room>().begin()->first);
    const Opening& removed = std::prev(rows.of<Opening>().end())->second;
    EXPECT_TRUE(removed.removed);
    EXPECT_EQ(removed.count, 2) << "it starts from what it removes";
    EXPECT_FALSE(to.book.plan(plan)->set);
}

TEST(PlanText, PositionsFollowTheFile) {
    OtherBook to;
    const Id<Plan> plan = to.bring(R"({"miterbook": "plan", "version": 1, "plan": {"name": "P"},
        "rooms": [{"name": "a"}, {"name": "b", "position": 7}, {"name": "c"}],
        "options": [{"name": "o", "rooms": [
            {"name": "d"}, {"changes": "b", "note": "n"}, {"name": "e"}]}]})");
    std::map<std::string, int> positions;
    for (const auto& [id, room] : to.book.sheet(plan).of<Room>())
        positions[room.name + room.note] = room.position;
    EXPECT_EQ(positions,
        (std::map<std::string, int>{{"a", 1}, {"b", 7}, {"c", 8}, {"d", 9}, {"e", 10}, {"bn", 7}}));
}

} // namespace

} // namespace miterbook
