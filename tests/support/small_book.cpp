// SPDX-License-Identifier: GPL-3.0-or-later
#include "support/small_book.h"

namespace miterbook {

namespace {

void addPrices(Book& book) {
    Shop shop;
    shop.id = Id<Shop>(1);
    shop.name = "Lindqvist Trim";
    book.prices.of<Shop>().put(shop);
    Builder builder;
    builder.id = Id<Builder>(10);
    builder.name = "Harrow Homes";
    book.prices.of<Builder>().put(builder);
    Profile casing;
    casing.id = Id<Profile>(20);
    casing.name = "Flat casing";
    casing.thickness = Length::sixteenths(12);
    casing.width = Length::sixteenths(56);
    book.prices.of<Profile>().put(casing);
    Stick stick;
    stick.id = Id<Stick>(21);
    stick.profile = casing.id;
    stick.length = Length::feet(14);
    stick.price = Money::cents(1890);
    book.prices.of<Stick>().put(stick);
}

Opening window(std::int64_t id, const std::string& mark, Id<Variant> variant) {
    Opening opening;
    opening.id = Id<Opening>(id);
    opening.plan = Id<Plan>(31);
    opening.level = Id<Level>(41);
    opening.room = Id<Room>(42);
    opening.variant = variant;
    opening.mark = mark;
    opening.width = Length::inches(36);
    opening.height = Length::inches(60);
    return opening;
}

void addSheet(PlanRows& rows, Id<Plan> plan) {
    Variant option;
    option.id = Id<Variant>(40);
    option.plan = plan;
    option.name = "Blank wall";
    rows.of<Variant>().put(option);
    Level level;
    level.id = Id<Level>(41);
    level.plan = plan;
    level.name = "Main level";
    rows.of<Level>().put(level);
    Room room;
    room.id = Id<Room>(42);
    room.plan = plan;
    room.level = level.id;
    room.name = "Great room";
    room.walls.resize(4, Wall{Length::feet(14)});
    rows.of<Room>().put(room);
    rows.of<Opening>().put(window(43, "W1", {}));
    rows.of<Opening>().put(window(44, "W2", {}));
    Opening gone = window(45, "W2", option.id);
    gone.replaces = Id<Opening>(44);
    gone.removed = true;
    rows.of<Opening>().put(gone);
}

} // namespace

Book smallBook() {
    Book book;
    addPrices(book);
    PlanSet set;
    set.id = Id<PlanSet>(30);
    set.builder = Id<Builder>(10);
    set.name = "Harrow Series";
    book.jobs.of<PlanSet>().put(set);
    Plan plan;
    plan.id = Id<Plan>(31);
    plan.set = set.id;
    plan.name = "Aspen";
    plan.windowCasing = Id<Profile>(20);
    book.jobs.of<Plan>().put(plan);
    addSheet(book.sheets[plan.id], plan.id);
    return book;
}

} // namespace miterbook
