// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <string>

namespace miterbook {

/// A small book with one opened plan of two levels and two rooms, made by hand so that nothing in
/// it depends on the starter book.
class BookFixture {
public:
    BookFixture() {
        addProfile("Colonial casing", ProfileUse::casing, 56);
        addProfile("Flat casing", ProfileUse::casing, 52);
        addProfile("Tall base", ProfileUse::base, 84);
        addProfile("Low base", ProfileUse::base, 52);
        addProfile("Shoe", ProfileUse::shoe, 12);
        addProfile("Spring crown", ProfileUse::crown, 58);
        addProfile("Shelf", ProfileUse::shelf, 188);
        addProfile("Rod", ProfileUse::rod, 21);
        addProfile("Chair rail", ProfileUse::chairRail, 42);
        addPlan();
    }

    Book book;
    IdSource ids;
    Id<Plan> plan;
    Id<Level> main;
    Id<Level> upper;
    Id<Room> kitchen; ///< 101, on the main level
    Id<Room> bath;    ///< 201, on the upper level

    PlanRows& rows() { return book.sheets[plan]; }

    Id<Profile> profile(const std::string& name) const {
        for (const auto& [id, each] : book.prices.of<Profile>()) {
            if (each.name == name)
                return id;
        }
        return {};
    }

    template <class Row>
    Id<Row> put(Row row) {
        row.id = ids.next<Row>();
        row.plan = plan;
        const Id<Row> id = row.id;
        rows().of<Row>().put(std::move(row));
        return id;
    }

private:
    void addProfile(const std::string& name, ProfileUse use, int sixteenthsWide) {
        Profile profile;
        profile.id = ids.next<Profile>();
        profile.name = name;
        profile.use = use;
        profile.thickness = Length::sixteenths(11);
        profile.width = Length::sixteenths(sixteenthsWide);
        book.prices.of<Profile>().put(profile);
    }

    void addPlan() {
        Builder builder;
        builder.id = ids.next<Builder>();
        builder.name = "Hollis Homes";
        book.prices.of<Builder>().put(builder);
        PlanSet set;
        set.id = ids.next<PlanSet>();
        set.builder = builder.id;
        set.name = "Creekside";
        book.jobs.of<PlanSet>().put(set);
        Plan row;
        row.id = plan = ids.next<Plan>();
        row.set = set.id;
        row.name = "Larkspur";
        book.jobs.of<Plan>().put(row);
        main = put(level("Main", 1));
        upper = put(level("Upper", 2));
        kitchen = put(room("101", "Kitchen", main, 1));
        bath = put(room("201", "Hall bath", upper, 2));
    }

    static Level level(const std::string& name, int position) {
        Level level;
        level.name = name;
        level.position = position;
        return level;
    }

    static Room room(
        const std::string& mark, const std::string& name, Id<Level> level, int position) {
        Room room;
        room.mark = mark;
        room.name = name;
        room.level = level;
        room.position = position;
        room.walls.assign(4, Wall());
        for (Wall& wall : room.walls)
            wall.length = Length::feet(10);
        return room;
    }
};

} // namespace miterbook
