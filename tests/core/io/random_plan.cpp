// SPDX-License-Identifier: GPL-3.0-or-later
#include "random_plan.h"

#include "plan/marks.h"
#include "plan/outline.h"
#include "plan/overlay.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace miterbook {

Length RandomPlan::length(Length least, Length most) {
    const std::int64_t grains[]{1, 100'000, 396'875, 1'587'500, Length::nmPerInch};
    const std::int64_t grain = grains[below(5)];
    const std::int64_t span = (most - least).nm() / grain;
    std::uniform_int_distribution<std::int64_t> steps(0, span);
    const std::int64_t first = (least.nm() + grain - 1) / grain;
    return std::min(Length::nanometres((first + steps(m_random)) * grain), most);
}

std::string RandomPlan::name() {
    static const char* names[]{
        "A", "B", "W1", "W1", "101", "#2", "Bath", "Große Küche", "a \"b\"\\", "x\ny", "", "Main"};
    std::string made = names[below(std::size(names))];
    return chance(2) ? made + std::to_string(below(30)) : made;
}

std::string RandomPlan::note() {
    return chance(3) ? "note " + name() : "";
}

Id<Profile> RandomPlan::profile() {
    const auto& profiles = m_fixture.book.prices.of<Profile>();
    if (chance(2))
        return {};
    return std::next(profiles.begin(), static_cast<long>(below(profiles.size())))->first;
}

void RandomPlan::makeSound(Opening& opening) {
    const auto taken = [&] {
        return std::ranges::any_of(m_rows->of<Opening>(), [&](const auto& entry) {
            return entry.second.mark == opening.mark && entry.second.variant == opening.variant;
        });
    };
    while (!opening.mark.empty() && taken())
        opening.mark += "'";
    const Room* room = m_rows->of<Room>().find(opening.room);
    if (room)
        opening.wall = std::min(opening.wall, static_cast<int>(room->walls.size()));
    if (room && opening.wall > 0)
        opening.along = std::min(
            opening.along, room->walls[static_cast<std::size_t>(opening.wall) - 1].length);
}

template <class Row>
void RandomPlan::put(Row row) {
    if constexpr (std::is_same_v<Row, Opening>)
        makeSound(row);
    row.id = m_fixture.ids.next<Row>();
    row.plan = m_plan;
    m_rows->of<Row>().put(std::move(row));
}

template <class Row, class Fn>
void RandomPlan::change(Id<Variant> variant, Fn&& fill) {
    std::vector<Row> plain;
    std::set<Id<Row>> changed;
    for (const auto& [id, row] : m_rows->of<Row>()) {
        if (!row.replaces && !row.removed)
            plain.push_back(row);
        if (row.variant == variant)
            changed.insert(row.replaces);
    }
    if (plain.empty())
        return;
    Row row = plain[below(plain.size())];
    if (changed.contains(row.id))
        return;
    const Id<Row> replaced = row.id;
    if (chance(2))
        fill(row);
    row.variant = variant;
    row.replaces = replaced;
    row.removed = chance(3);
    put(row);
}

template <class Row, class Fn>
void RandomPlan::add(std::size_t most, Fn&& fill) {
    int position = 1;
    for (std::size_t n = below(most + 1); n > 0; --n) {
        Row row;
        fill(row);
        row.position = chance(6) ? static_cast<int>(below(20)) : position++;
        if (!m_variants.empty() && chance(3))
            row.variant = m_variants[below(m_variants.size())];
        put(row);
    }
    for (const Id<Variant> variant : m_variants)
        change<Row>(variant, fill);
}

std::vector<Wall> RandomPlan::walls() {
    std::vector<Wall> walls(below(2) ? 4 : below(9));
    for (Wall& wall : walls) {
        wall.length = length(Length::inches(6), Length::feet(40));
        if (chance(3))
            wall.corner = any<Corner>();
        if (chance(5))
            wall.angle = Angle::hundredths(1 + static_cast<int>(below(17'999)));
        wall.base = !chance(6);
        wall.crown = !chance(6);
        wall.shoe = !chance(6);
    }
    if (walls.size() == 4 && chance(2)) {
        walls[2] = walls[0];
        walls[3] = walls[1];
    }
    return walls;
}

void RandomPlan::fill(Level& level) {
    level.name = "L" + name();
    level.ceiling = length(Length::feet(7), Length::feet(20));
    level.upper = chance(2);
}

void RandomPlan::fill(Room& room) {
    room.outline.clear(); // a room that changes another starts from it
    room.breaks.clear();
    room.level = ref<Level>();
    room.mark = name();
    room.name = name();
    room.use = any<RoomUse>();
    room.walls = walls();
    room.ceiling = length(Length(), Length::feet(20));
    room.baseChoice = any<RunChoice>();
    room.base = profile();
    room.shoeChoice = any<RunChoice>();
    room.shoe = profile();
    room.crownChoice = any<RunChoice>();
    room.crown = profile();
    room.chairRail = profile();
    room.baseBreak = chance(2) ? Length() : length(Length(), Length::inches(6));
    room.extraBase = length(Length(), Length::feet(20));
    room.builtUpBase = chance(3);
    room.note = note();
    if (chance(2))
        draw(room);
    for (std::size_t i = 0; i < room.walls.size() && chance(2); ++i)
        room.breaks.push_back({static_cast<int>(i) + 1, Length(),
            length(Length::nanometres(1), room.walls[i].length), any<BreakKind>()});
}

/// A room of four or six corners somewhere about the zero.
void RandomPlan::draw(Room& room) {
    const Length x = length(Length(), Length::feet(90)) - Length::feet(45);
    const Length y = length(Length(), Length::feet(90)) - Length::feet(45);
    const Length w = length(Length::feet(6), Length::feet(30));
    const Length h = length(Length::feet(6), Length::feet(30));
    Outline outline{{x, y}, {x + w, y}, {x + w, y + h}, {x, y + h}};
    if (chance(2))
        outline = {{x, y}, {x + w, y}, {x + w, y + h / 2}, {x + w / 3, y + h / 3}, {x, y + h}};
    room.baseBreak = Length();
    room.breaks.clear();
    EXPECT_TRUE(setOutline(room, outline).ok());
}

void RandomPlan::fillShape(Opening& opening) {
    opening.shape = any<Shape>();
    if (opening.shape == Shape::arch)
        opening.rise = length(Length::inches(1), opening.width / 2);
    if (opening.shape == Shape::polygon) {
        const Length side = length(Length::inches(6), Length::feet(8));
        opening.sides.assign(below(2) ? 4 : 3, {side, Angle::degrees(90)});
        for (PolygonSide& each : opening.sides)
            each.angle = Angle::degrees(opening.sides.size() == 4 ? 90 : 60);
    }
}

void RandomPlan::fill(Opening& opening) {
    opening.level = ref<Level>();
    opening.room = ref<Room>();
    opening.otherRoom = ref<Room>();
    opening.wall = static_cast<int>(below(5));
    opening.mark = name();
    opening.count = 1 + static_cast<int>(below(9));
    opening.kind = any<OpeningKind>();
    opening.width = length(Length::inches(12), Length::feet(12));
    opening.height = length(Length::inches(12), Length::feet(12));
    fillShape(opening);
    opening.style = any<TrimStyle>();
    opening.sidesCased = static_cast<int>(below(3));
    opening.casing = profile();
    opening.stool = profile();
    opening.cap = profile();
    opening.reveal = length(Length(), Length::inches(1));
    opening.mulls = static_cast<int>(below(4));
    opening.mullCasing = profile();
    opening.wallThickness = length(Length(), Length::inches(12));
    opening.frameDepth = length(Length(), Length::inches(9));
    opening.hand = any<Hand>();
    opening.lockset = any<Lockset>();
    opening.deadbolt = chance(2);
    opening.doorStop = chance(2);
    opening.fromSubfloor = chance(2);
    opening.flooring = length(Length(), Length::inches(2));
    opening.note = note();
    opening.along = length(Length(), Length::feet(40));
}

void RandomPlan::fill(Closet& closet) {
    closet.level = ref<Level>();
    closet.room = ref<Room>();
    closet.name = name();
    closet.kind = any<ClosetKind>();
    closet.width = length(Length::inches(12), Length::feet(12));
    closet.depth = length(Length::inches(6), Length::feet(3));
    closet.shelves = 1 + static_cast<int>(below(8));
    closet.count = 1 + static_cast<int>(below(3));
    closet.shelf = profile();
    closet.rod = profile();
    closet.cleat = profile();
    closet.note = note();
}

void RandomPlan::fill(Stair& stair) {
    stair.level = ref<Level>();
    stair.room = ref<Room>();
    stair.name = name();
    stair.risers = 1 + static_cast<int>(below(20));
    stair.closedSkirts = static_cast<int>(below(3));
    stair.openSkirts = static_cast<int>(below(3));
    stair.treadsAndRisers = chance(2);
    stair.skirtLength = length(Length::feet(5), Length::feet(20));
    stair.skirt = profile();
    stair.rail = any<RailStyle>();
    stair.railLength = length(Length::feet(5), Length::feet(40));
    stair.handrail = profile();
    stair.newels = static_cast<int>(below(5));
    stair.balusters = static_cast<int>(below(40));
    stair.balusterRun = length(Length(), Length::feet(30));
    stair.balusterWidth = length(Length::inches(1), Length::inches(3));
    stair.note = note();
    stair.walkLine.resize(chance(2) ? 0 : 2 + below(3));
    for (PlanPoint& point : stair.walkLine)
        point = {length(Length(), Length::feet(40)), length(Length(), Length::feet(40))};
    stair.flightWidth = length(Length::feet(2), Length::feet(5));
}

void RandomPlan::fill(WallTreatment& treatment) {
    treatment.level = ref<Level>();
    treatment.room = ref<Room>();
    treatment.name = name();
    treatment.kind = any<TreatmentKind>();
    treatment.width = length(Length::feet(1), Length::feet(40));
    treatment.height = length(Length::feet(1), Length::feet(10));
    treatment.board = profile();
    treatment.spacing = length(Length::inches(3), Length::feet(3));
    treatment.cap = profile();
    treatment.note = note();
}

void RandomPlan::fill(OtherWork& other) {
    other.level = ref<Level>();
    other.room = ref<Room>();
    other.name = name();
    other.task = any<Task>();
    other.quantity = Quantity::thousandths(static_cast<int>(below(90'000)));
    other.profile = profile();
    other.length = length(Length(), Length::feet(40));
    other.material = Money::cents(static_cast<int>(below(900'000)));
    other.note = note();
    std::vector<PlanPoint> marks(below(6));
    for (PlanPoint& mark : marks)
        mark = {length(Length(), Length::feet(80)) - Length::feet(40),
            length(Length(), Length::feet(80)) - Length::feet(40)};
    const MarkKind kind = any<MarkKind>();
    other.marked = MarkKind::none;
    other.marks.clear();
    if (kind != MarkKind::none)
        setMarks(other, kind, marks);
}

void RandomPlan::addSheets() {
    for (std::size_t n = below(3); n > 0; --n) {
        SheetFile file;
        file.name = name();
        file.content = Bytes(std::string(1 + below(40), static_cast<char>(below(256))));
        put(file);
        Underlay underlay;
        underlay.level = ref<Level>();
        underlay.file = std::prev(m_rows->of<SheetFile>().end())->first;
        underlay.page = 1 + static_cast<int>(below(40));
        underlay.scale = length(Length(), Length::inches(4));
        underlay.x = length(Length(), Length::feet(80)) - Length::feet(40);
        underlay.y = length(Length(), Length::feet(80)) - Length::feet(40);
        underlay.turn = Angle::hundredths(static_cast<int>(below(36'000)));
        underlay.strength = static_cast<int>(below(101));
        underlay.hidden = chance(2);
        put(underlay);
        put(Dismissal{{}, {}, "Closet has no shelving." + name(), "The owner's. " + name()});
    }
}

void RandomPlan::addVariants() {
    for (std::size_t n = below(5); n > 0; --n) {
        Variant variant;
        variant.kind = any<VariantKind>();
        variant.name = "V" + name();
        variant.note = note();
        variant.reversed = chance(3);
        put(variant);
        m_variants.push_back(std::prev(m_rows->of<Variant>().end())->first);
    }
    for (const Id<Variant> variant : m_variants) {
        Swap swap;
        swap.variant = variant;
        swap.from = profile();
        swap.to = profile();
        if (swap.from && swap.to && swap.from != swap.to)
            put(swap);
    }
}

void RandomPlan::addRows() {
    const auto filled = [this](auto& row) { fill(row); };
    add<Level>(4, filled);
    add<Room>(12, filled);
    add<Opening>(20, filled);
    add<Closet>(4, filled);
    add<Stair>(3, filled);
    add<WallTreatment>(3, filled);
    add<OtherWork>(4, filled);
    addSheets();
}

Id<Plan> RandomPlan::make() {
    Plan plan = *m_fixture.book.plan(m_fixture.plan);
    plan.id = m_plan = m_fixture.ids.next<Plan>();
    plan.name = "Plan " + std::to_string(plan.id.value());
    plan.floorArea = static_cast<int>(below(9000));
    for (Id<Profile> Plan::*use : {&Plan::windowCasing, &Plan::doorCasing, &Plan::stool,
             &Plan::jamb, &Plan::base, &Plan::shoe, &Plan::crown})
        plan.*use = profile();
    plan.note = note();
    m_fixture.book.jobs.of<Plan>().put(plan);
    m_rows = &m_fixture.book.sheets[m_plan];
    m_variants.clear();
    addVariants();
    addRows();
    return m_plan;
}

} // namespace miterbook
