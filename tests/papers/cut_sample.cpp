// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/cut_sample.h"

#include "cut/progress.h"
#include "job/cut_figures.h"

namespace miterbook {

namespace {

constexpr Length in(int whole, int sixteenths = 0) {
    return Length::inches(whole) + Length::sixteenths(sixteenths);
}

Profile profile(std::int64_t id, const char* name, ProfileUse use, Length width, int spring = 0) {
    Profile row;
    row.id = Id<Profile>(id);
    row.name = name;
    row.use = use;
    row.thickness = in(0, 11);
    row.width = width;
    row.material = "primed poplar";
    row.springAngle = Angle::degrees(spring);
    return row;
}

Opening opening(std::int64_t id, Id<Level> level, const char* mark, Length width, Length height) {
    Opening row;
    row.id = Id<Opening>(id);
    row.plan = Id<Plan>(2);
    row.level = level;
    row.position = static_cast<int>(id);
    row.mark = mark;
    row.width = width;
    row.height = height;
    return row;
}

Measure measure(std::int64_t id, std::int64_t opening, Length width, Length height) {
    Measure row;
    row.id = Id<Measure>(id);
    row.plan = Id<Plan>(2);
    row.opening = Id<Opening>(opening);
    row.position = static_cast<int>(id);
    row.widthTop = row.widthBottom = width;
    row.heightLeft = row.heightRight = height;
    return row;
}

} // namespace

CutSample::CutSample() {
    addPrices();
    addPlan();
    addMeasures();
    refresh();
    cutSome();
    refresh();
}

void CutSample::addPrices() {
    Shop shop;
    shop.id = Id<Shop>(1);
    shop.name = "Lindqvist Trim";
    shop.phone = "555 0142";
    book.prices.of<Shop>().put(shop);
    for (const Profile& row : {profile(21, "Flat casing", ProfileUse::casing, in(3, 8)),
             profile(22, "Eased base", ProfileUse::base, in(4, 4)),
             profile(23, "Cove crown", ProfileUse::crown, in(3, 10), 38)}) {
        book.prices.of<Profile>().put(row);
        for (const int feet : {12, 16}) {
            Stick stick;
            stick.id = Id<Stick>(row.id.value() * 100 + feet);
            stick.profile = row.id;
            stick.length = Length::feet(feet);
            stick.price = Money::dollars(feet);
            book.prices.of<Stick>().put(stick);
        }
    }
    Offcut offcut;
    offcut.id = Id<Offcut>(29);
    offcut.profile = Id<Profile>(21);
    offcut.length = in(78);
    book.prices.of<Offcut>().put(offcut);
}

void CutSample::addPlan() {
    Plan row;
    row.id = plan;
    row.house = house;
    row.name = "Alder 2";
    row.windowCasing = row.doorCasing = Id<Profile>(21);
    row.base = Id<Profile>(22);
    row.crown = Id<Profile>(23);
    book.jobs.of<Plan>().put(row);
    House built;
    built.id = house;
    built.plan = built.work = plan;
    built.name = "Lot 14";
    built.address = "14 Ferry Lane";
    book.jobs.of<House>().put(built);
    SheetRows& sheet = book.sheets[plan];
    for (const auto& [id, name] :
        {std::pair(main, "Main level"), std::pair(upper, "Upper level")}) {
        Level level;
        level.id = id;
        level.plan = plan;
        level.position = static_cast<int>(id.value());
        level.name = name;
        sheet.of<Level>().put(level);
    }
    Opening pair = opening(31, main, "W1", in(36), in(60));
    pair.count = 2;
    Opening gable = opening(33, upper, "W3", in(40), in(30));
    gable.shape = Shape::polygon;
    gable.sides = {{in(24), Angle::degrees(150)}, {Length::fromInches(23.094), Angle::degrees(60)},
        {Length::fromInches(23.094), Angle::degrees(150)}, {in(24), Angle::degrees(90)},
        {in(40), Angle::degrees(90)}};
    Opening door = opening(34, main, "D1", in(30), in(80));
    door.kind = OpeningKind::prehungDoor;
    door.style = TrimStyle::threeSided;
    door.sidesCased = 2;
    for (const Opening& each : {pair, opening(32, main, "W2", in(24), in(36)), gable, door})
        sheet.of<Opening>().put(each);
    Room den;
    den.id = Id<Room>(41);
    den.plan = plan;
    den.level = main;
    den.name = "Den";
    den.walls.resize(4, Wall{Length::feet(11)});
    den.walls[1].corner = Corner::outside;
    den.crownChoice = RunChoice::plan;
    sheet.of<Room>().put(den);
}

void CutSample::addMeasures() {
    Table<Measure>& measures = book.sheets[plan].of<Measure>();
    Measure first = measure(51, 31, in(36), in(60));
    first.diagonalUp = in(70, 1);
    first.diagonalDown = in(69, 15);
    measures.put(first);
    Measure second = measure(52, 31, in(36) + Length::thirtySeconds(1), in(60));
    second.unit = 2;
    second.proud = -in(0, 2);
    measures.put(second);
    Measure third = measure(53, 32, in(24, 12), in(36));
    third.note = "drywall loose at the left";
    measures.put(third);
    SawTest test;
    test.id = Id<SawTest>(61);
    test.plan = plan;
    test.set = in(36);
    test.measured = in(36) - Length::thirtySeconds(1);
    book.sheets[plan].of<SawTest>().put(test);
}

void CutSample::refresh() {
    figures = figuresFor(book, plan, {}, Effort::quick);
}

void CutSample::cutSome() {
    Table<CutPiece>& kept = book.sheets[plan].of<CutPiece>();
    IdSource ids(1000);
    const auto tick = [&](const std::vector<std::size_t>& places, PieceState state) {
        const SawSheet sheet = cutFiguresFor(book, figures).sheet;
        for (const CutPiece& row : ticked(sheet, places, state, plan, kept, ids))
            kept.put(row);
    };
    const SawSheet sheet = cutFiguresFor(book, figures).sheet;
    tick(sheet.stops.front().pieces, PieceState::cut);
    tick(piecesOf(sheet, 32, 1), PieceState::assembled);
    tick({sheet.stops.front().pieces.front()}, PieceState::spoiled);
}

PaperJob CutSample::job(Id<Level> level) const {
    return {book, plan, house, level,
        Date(std::chrono::year(2026), std::chrono::November, std::chrono::day(25))};
}

} // namespace miterbook
