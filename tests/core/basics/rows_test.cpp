// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/fields.h"
#include "basics/tables.h"
#include "basics/words.h"

#include <gtest/gtest.h>
#include <string>
#include <unordered_set>
#include <vector>

namespace miterbook {

struct Shelf {
    Id<Shelf> id;
    std::string name;

    bool operator==(const Shelf&) const = default;
};

struct Rod {
    Id<Rod> id;

    bool operator==(const Rod&) const = default;
};

template <>
struct Describe<Shelf> {
    static constexpr std::string_view table = "shelf";
    static constexpr std::string_view noun = "shelf";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Shelf::id), field("name", &Shelf::name));
    }
};

enum class Timber { pine, oak };

template <>
struct Words<Timber> {
    static constexpr std::array list{Word{Timber::pine, "pine"}, Word{Timber::oak, "oak"}};
};

namespace {

TEST(Id, ZeroIsNone) {
    EXPECT_FALSE(Id<Shelf>());
    EXPECT_TRUE(Id<Shelf>(4));
    const std::unordered_set<Id<Shelf>> seen{Id<Shelf>(4), Id<Shelf>(4), Id<Shelf>(5)};
    EXPECT_EQ(seen.size(), 2U);
}

TEST(IdSource, NeverGivesAnIdTwiceWhateverTheKind) {
    IdSource ids(10);
    EXPECT_EQ(ids.next<Shelf>().value(), 11);
    EXPECT_EQ(ids.next<Rod>().value(), 12);
    ids.skipTo(40);
    EXPECT_EQ(ids.next<Shelf>().value(), 41);
    ids.skipTo(5); // going back would give ids twice
    EXPECT_EQ(ids.next<Shelf>().value(), 42);
    EXPECT_EQ(ids.last(), 42);
}

TEST(Table, KeepsOneRowForEachId) {
    Table<Shelf> shelves;
    shelves.put({Id<Shelf>(2), "pantry"});
    shelves.put({Id<Shelf>(1), "linen"});
    shelves.put({Id<Shelf>(2), "pantry, five shelves"});
    ASSERT_EQ(shelves.size(), 2U);
    ASSERT_NE(shelves.find(Id<Shelf>(2)), nullptr);
    EXPECT_EQ(shelves.find(Id<Shelf>(2))->name, "pantry, five shelves");
    EXPECT_EQ(shelves.begin()->second.name, "linen"); // in the order they were made
    shelves.erase(Id<Shelf>(1));
    EXPECT_EQ(shelves.find(Id<Shelf>(1)), nullptr);
    EXPECT_FALSE(shelves.contains(Id<Shelf>(1)));
}

TEST(Tables, AreFoundByKind) {
    Tables<Shelf, Rod> tables;
    tables.of<Rod>().put({Id<Rod>(7)});
    EXPECT_TRUE(tables.of<Shelf>().empty());
    EXPECT_TRUE(tables.of<Rod>().contains(Id<Rod>(7)));
    std::vector<std::size_t> sizes;
    tables.forEach([&](const auto& table) { sizes.push_back(table.size()); });
    EXPECT_EQ(sizes, (std::vector<std::size_t>{0, 1}));
    EXPECT_NE(tables, (Tables<Shelf, Rod>()));
    static_assert(Tables<Shelf>::holds<Shelf> && !Tables<Shelf>::holds<Rod>);
}

TEST(Fields, NameAndReachEveryMemberInOrder) {
    Shelf shelf;
    std::vector<std::string_view> names;
    forEachField<Shelf>([&](const auto& each) {
        names.push_back(each.name);
        if constexpr (std::is_same_v<decltype(each.member), std::string Shelf::*>)
            shelf.*each.member = "linen";
    });
    EXPECT_EQ(names, (std::vector<std::string_view>{"id", "name"}));
    EXPECT_EQ(shelf.name, "linen");
    static_assert(fieldCount<Shelf> == 2);
}

TEST(Words, GoBothWays) {
    EXPECT_EQ(word(Timber::oak), "oak");
    EXPECT_EQ(fromWord<Timber>("pine"), Timber::pine);
    EXPECT_EQ(fromWord<Timber>("Pine"), std::nullopt);
    EXPECT_EQ(fromWord<Timber>(""), std::nullopt);
}

} // namespace

} // namespace miterbook
