// SPDX-License-Identifier: GPL-3.0-or-later
// A house's own copy is the whole plan as selected, and nothing else of the book changes.
#include "job/start_house.h"
#include "job/whole_edit.h"
#include "support/random_rows.h"

#include <gtest/gtest.h>

#include <map>

namespace miterbook {
namespace {

template <class Row>
void number(const std::vector<Row>& rows, std::map<std::int64_t, std::int64_t>& places) {
    for (const Row& row : rows)
        places.emplace(row.id.value(), std::ssize(places) + 1);
}

template <class Target>
void renumber(Id<Target>& id, const std::map<std::int64_t, std::int64_t>& places) {
    const auto it = places.find(id.value());
    id = Id<Target>(it == places.end() ? 0 : it->second);
}

template <class Row>
void renumber(std::vector<Row>& rows, const std::map<std::int64_t, std::int64_t>& places) {
    for (Row& row : rows) {
        row.id = {};
        row.plan = {};
        row.variant = {};
        row.replaces = {};
        if constexpr (requires { row.level; })
            renumber(row.level, places);
        if constexpr (requires { row.room; })
            renumber(row.room, places);
        if constexpr (requires { row.otherRoom; })
            renumber(row.otherRoom, places);
    }
}

/// The plan with levels and rooms named by their place, so that two plans can be compared that
/// differ in ids alone.
WholePlan withoutIds(WholePlan whole) {
    std::map<std::int64_t, std::int64_t> places;
    number(whole.levels, places);
    number(whole.rooms, places);
    renumber(whole.levels, places);
    renumber(whole.rooms, places);
    renumber(whole.openings, places);
    renumber(whole.closets, places);
    renumber(whole.stairs, places);
    renumber(whole.treatments, places);
    renumber(whole.others, places);
    whole.plan.id = {};
    whole.plan.house = {};
    whole.remarks.clear();
    return whole;
}

struct Started {
    Book book;
    Book before;
    HouseStart start;
    Edit edit;
};

/// A house started from the first plan of a random book, with what elevation and options it has.
Started startOne(std::uint32_t seed) {
    Started made;
    made.book = randomBook(seed, 6);
    const Id<Plan> plan = plansOf(made.book).front();
    Plan own = *made.book.plan(plan);
    own.house = {}; // a builder's plan
    made.book.jobs.of<Plan>().put(own);
    made.start.plan = plan;
    made.start.name = "Lot 12";
    for (const auto& [id, variant] : made.book.sheet(plan).of<Variant>()) {
        if (variant.kind == VariantKind::elevation)
            made.start.selection.elevation = id;
        else
            made.start.selection.options.push_back(id);
    }
    made.before = made.book;
    IdSource ids(highestId(wholeEdit(made.book, "")));
    auto edit = startHouse(made.book, ids, made.start);
    EXPECT_TRUE(edit.ok()) << (edit ? "" : edit.error().sentence);
    if (edit)
        made.edit = *edit;
    apply(made.book, made.edit);
    return made;
}

class StartHouseLaws : public testing::TestWithParam<std::uint32_t> {};

TEST_P(StartHouseLaws, TheCopyIsTheWholePlanAsSelected) {
    const Started made = startOne(GetParam());
    const House& house = std::prev(made.book.jobs.of<House>().end())->second;
    ASSERT_EQ(house.name, "Lot 12");
    const WholePlan source = wholePlan(*made.before.plan(made.start.plan),
        made.before.sheet(made.start.plan), made.start.selection);
    const WholePlan copy = wholePlan(*made.book.plan(house.work), made.book.sheet(house.work));
    EXPECT_EQ(withoutIds(copy), withoutIds(source));
    EXPECT_EQ(made.book.plan(house.work)->house, house.id);
    EXPECT_TRUE(made.book.sheet(house.work).of<Variant>().empty());
    EXPECT_TRUE(made.book.sheet(house.work).of<Swap>().empty());
}

TEST_P(StartHouseLaws, OnlyNewRowsWithNewIds) {
    const Started made = startOne(GetParam());
    const std::int64_t highest = highestId(wholeEdit(made.before, ""));
    for (const Change& change : made.edit.changes) {
        EXPECT_FALSE(change.before.has_value());
        EXPECT_GT(change.row().id(), highest);
    }
    EXPECT_EQ(made.book.sheet(made.start.plan), made.before.sheet(made.start.plan));
}

TEST_P(StartHouseLaws, RemovingTheHouseLeavesNothingOfIt) {
    Started made = startOne(GetParam());
    const House& house = std::prev(made.book.jobs.of<House>().end())->second;
    apply(made.book, removeHouse(made.book, house.id));
    EXPECT_EQ(made.book, made.before);
}

INSTANTIATE_TEST_SUITE_P(Seeds, StartHouseLaws, testing::Values(21, 22, 23, 24, 25));

} // namespace
} // namespace miterbook
