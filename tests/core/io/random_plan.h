// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book_fixture.h"

#include <random>
#include <string>
#include <vector>

namespace miterbook {

/// Makes plans that use every kind of row and field, within what the checks of rows allow: names
/// that repeat, are empty or look like places, lengths of every grain, differences of differences.
class RandomPlan {
public:
    RandomPlan(BookFixture& fixture, unsigned seed)
        : m_fixture(fixture)
        , m_random(seed) {}

    /// A new opened plan in the fixture's book.
    Id<Plan> make();

private:
    std::size_t below(std::size_t n) { return m_random() % n; }
    bool chance(std::size_t oneIn) { return below(oneIn) == 0; }
    Length length(Length least, Length most);
    std::string name();
    std::string note();

    template <class E>
    E any() {
        return Words<E>::list[below(Words<E>::list.size())].value;
    }
    Id<Profile> profile();

    /// One of the rows made so far, or none.
    template <class Row>
    Id<Row> ref() {
        const auto& table = m_rows->of<Row>();
        if (table.empty() || chance(3))
            return {};
        return std::next(table.begin(), static_cast<long>(below(table.size())))->first;
    }

    /// Adds rows of one kind, filled by `fill(row)`, to the plan and its variants.
    template <class Row, class Fn>
    void add(std::size_t most, Fn&& fill);
    /// A row that changes or removes one which is no change itself, once in a variant.
    template <class Row, class Fn>
    void change(Id<Variant> variant, Fn&& fill);
    template <class Row>
    void put(Row row);

    /// No two of the same mark in one variant, and a wall that the room has.
    void makeSound(Opening& opening);

    std::vector<Wall> walls();
    void fillShape(Opening& opening);
    void addVariants();
    void addRows();

    void fill(Level& level);
    void fill(Room& room);
    void fill(Opening& opening);
    void fill(Closet& closet);
    void fill(Stair& stair);
    void fill(WallTreatment& treatment);
    void fill(OtherWork& other);
    void draw(Room& room);
    void addSheets();

    BookFixture& m_fixture;
    std::mt19937 m_random;
    Id<Plan> m_plan;
    PlanRows* m_rows = nullptr;
    std::vector<Id<Variant>> m_variants;
};

} // namespace miterbook
