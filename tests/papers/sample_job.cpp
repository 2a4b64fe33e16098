// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/sample_job.h"

namespace miterbook {

namespace {

constexpr Id<Profile> casing{41};
constexpr Id<Profile> stool{42};
constexpr Id<Profile> base{43};
constexpr Id<Profile> oak{44};
constexpr Id<Room> greatRoom{51};
constexpr Id<Room> study{52};
constexpr Id<Opening> w1{61};
constexpr Id<Opening> w2{62};
constexpr Id<Opening> d1{63};
constexpr Id<Opening> d2{64};
constexpr Id<OtherWork> bench{65};

Profile profileOf(Id<Profile> id, std::string name, ProfileUse use, int thickness, int width) {
    Profile profile;
    profile.id = id;
    profile.name = std::move(name);
    profile.use = use;
    profile.thickness = Length::sixteenths(thickness);
    profile.width = Length::sixteenths(width);
    profile.material = "primed pine";
    return profile;
}

Opening openingOf(Id<Opening> id, std::string mark, int count, OpeningKind kind, TrimStyle style) {
    Opening opening;
    opening.id = id;
    opening.mark = std::move(mark);
    opening.count = count;
    opening.kind = kind;
    opening.style = style;
    return opening;
}

} // namespace

SampleJob::SampleJob() {
    fillPrices();
    fillPlans();
    fillWhole();
    fillTakeoff();
    fillEstimate();
    fillOrder();
    refresh();
}

void SampleJob::refresh() {
    book.prices.of<Shop>().put(m_shop);
    book.prices.of<Terms>().put(m_terms);
    book.prices.of<Builder>().put(m_builder);
}

PaperJob SampleJob::planJob() const {
    using namespace std::chrono_literals;
    return {book, plan, {}, {}, 2026y / 11 / 25, {elevation, {option}}};
}

PaperJob SampleJob::houseJob() const {
    using namespace std::chrono_literals;
    return {book, ownPlan, house, {}, 2026y / 11 / 25};
}

void SampleJob::fillPrices() {
    m_shop.id = Id<Shop>(1);
    m_shop.name = "Quillfeather Trim";
    m_shop.address = "12 Mill Lane\nFennel Ford, OR 97999";
    m_shop.phone = "(503) 555-0142";
    m_shop.email = "office@quillfeather.example";
    m_shop.licence = "212999";
    m_terms.id = Id<Terms>(1);
    m_terms.paymentTerms = "Half when the trim is hung, the rest after the punch list.";
    m_builder.id = Id<Builder>(11);
    m_builder.name = "Alder Row Homes";
    m_builder.contact = "Ines Marrow";
    m_builder.address = "4 Alder Row\nFennel Ford, OR 97999";
    auto& profiles = book.prices.of<Profile>();
    profiles.put(profileOf(casing, "Flat casing", ProfileUse::casing, 11, 52));
    profiles.put(profileOf(stool, "Window stool", ProfileUse::stool, 11, 84));
    profiles.put(profileOf(base, "Eased base", ProfileUse::base, 9, 68));
    Profile bench = profileOf(oak, "Bench board", ProfileUse::board, 12, 88);
    bench.material = "red oak";
    bench.finish = Finish::stain;
    profiles.put(bench);
}

void SampleJob::fillPlans() {
    book.jobs.of<PlanSet>().put({Id<PlanSet>(12), m_builder.id, "Meadow series", "Fennel Creek"});
    Plan row;
    row.id = plan;
    row.set = Id<PlanSet>(12);
    row.name = "The Juniper";
    book.jobs.of<Plan>().put(row);
    row.id = ownPlan;
    row.house = house;
    book.jobs.of<Plan>().put(row);
    House built;
    built.id = house;
    built.plan = plan;
    built.work = ownPlan;
    built.name = "Fennel Creek 14";
    built.lot = "14";
    built.address = "318 Tansy Court\nFennel Ford, OR 97999";
    built.elevation = elevation;
    built.options = {option};
    book.jobs.of<House>().put(built);
    Variant variant;
    variant.plan = plan;
    variant.id = elevation;
    variant.kind = VariantKind::elevation;
    variant.name = "B, farmhouse";
    auto& variants = book.sheets[plan].of<Variant>();
    variants.put(variant);
    variant.id = option;
    variant.kind = VariantKind::option;
    variant.name = "Window bench in the study";
    variants.put(variant);
}

void SampleJob::fillWhole() {
    WholePlan& whole = figures.whole;
    whole.plan = *book.plan(plan);
    Level level;
    level.id = ground;
    level.name = "First floor";
    whole.levels.push_back(level);
    level.id = upper;
    level.name = "Second floor";
    level.upper = true;
    whole.levels.push_back(level);
    Room room;
    room.id = greatRoom;
    room.level = ground;
    room.mark = "101";
    room.name = "Great room";
    whole.rooms.push_back(room);
    room.id = study;
    room.level = upper;
    room.mark = "201";
    room.name = "Study";
    whole.rooms.push_back(room);
    const auto add = [&](Opening opening, Id<Level> on, int sides) {
        opening.level = on;
        opening.sidesCased = sides;
        whole.openings.push_back(std::move(opening));
    };
    using enum OpeningKind;
    add(openingOf(w1, "W1", 6, window, TrimStyle::stoolAndApron), ground, 1);
    add(openingOf(w2, "W2", 2, window, TrimStyle::pictureFrame), upper, 2);
    add(openingOf(d1, "D1", 5, prehungDoor, TrimStyle::threeSided), ground, 2);
    add(openingOf(d2, "D2", 1, exteriorDoor, TrimStyle::threeSided), ground, 1);
}

void SampleJob::fillTakeoff() {
    Takeoff& takeoff = figures.takeoff;
    const Source fromW1{w1, ground, greatRoom, "W1"};
    const Source fromW2{w2, upper, study, "W2"};
    const Source fromD1{d1, ground, greatRoom, "D1"};
    const Source fromD2{d2, ground, {}, "D2"};
    const Source fromRoom{greatRoom, ground, greatRoom, "Great room"};
    const Source fromBench{bench, upper, study, "Window bench"};
    const PieceEnd miter{EndCut::miter, 45, 0};
    const PieceEnd square;
    const auto piece = [&](PieceOfWork work, const Source& source, Id<Profile> profile,
                           const char* part, int shortPoint, int longPoint, int count) {
        const bool mitered = shortPoint != longPoint;
        takeoff.pieces.push_back({work, source, profile, part, Length::sixteenths(shortPoint),
            Length::sixteenths(longPoint), mitered ? miter : square, mitered ? miter : square,
            count});
    };
    piece(PieceOfWork::windows, fromW1, casing, "head", 582, 686, 6);
    piece(PieceOfWork::windows, fromW1, casing, "apron", 686, 686, 6);
    piece(PieceOfWork::windows, fromW1, stool, "stool", 710, 710, 6);
    piece(PieceOfWork::windows, fromW2, casing, "side", 966, 1070, 16);
    piece(PieceOfWork::doors, fromD1, casing, "leg", 1283, 1335, 20);
    piece(PieceOfWork::doors, fromD2, casing, "leg", 1283, 1335, 2);
    piece(PieceOfWork::base, fromRoom, base, "base, wall 1", 2880, 2880, 1);
    piece(PieceOfWork::base, fromRoom, base, "base, wall 2", 2304, 2304, 1);
    piece(PieceOfWork::builtIns, fromBench, oak, "material", 1152, 1152, 3);
    takeoff.runs.push_back(
        {PieceOfWork::base, fromRoom, base, 3, 1, 1, Length::sixteenths(5184 - 16)});
    const auto task = [&](PieceOfWork work, Task kind, Quantity quantity, const Source& source) {
        takeoff.tasks.push_back({work, kind, quantity, {}, source, {}});
    };
    task(PieceOfWork::windows, Task::stoolAndApronWindow, Quantity::count(6), fromW1);
    task(PieceOfWork::windows, Task::longSide, Quantity::count(4), fromW1);
    task(PieceOfWork::windows, Task::pictureFrameWindow, Quantity::count(4), fromW2);
    task(PieceOfWork::doors, Task::prehungDoor, Quantity::count(5), fromD1);
    task(PieceOfWork::doors, Task::exteriorDoor, Quantity::count(1), fromD2);
    task(PieceOfWork::base, Task::base, Quantity::thousandths(26917), fromRoom);
    task(PieceOfWork::hardware, Task::lockset, Quantity::count(5), fromD1);
    task(PieceOfWork::extras, Task::other, Quantity::thousandths(7130), fromBench);
    task(PieceOfWork::trips, Task::trip, Quantity::count(2), {plan, {}, {}, "The Juniper"});
    takeoff.parts.push_back({PieceOfWork::hardware, PartUse::passageSet, 5, fromD1});
    takeoff.remarks.push_back({Remark::Weight::warning, fromRoom,
        "Great room: wall 1 is longer than the longest stick of Eased base and is spliced once."});
}

void SampleJob::fillEstimate() {
    // Cents that stand out wherever they turn up: a bid must show none but the price.
    int step = 0;
    Estimate& estimate = figures.estimate;
    for (const PieceOfWork work : {PieceOfWork::doors, PieceOfWork::windows, PieceOfWork::base,
             PieceOfWork::hardware, PieceOfWork::trips, PieceOfWork::extras}) {
        ++step;
        WorkTotal line;
        line.work = work;
        line.hours = Hours::minutes(4'627 + step);
        line.labour = Money::cents(131'713 + step);
        line.material = Money::cents(74'619 + step);
        line.consumables = Money::cents(3'737 + step);
        line.overhead = Money::cents(21'919 + step);
        line.profit = Money::cents(46'423 + step);
        line.price = line.cost() + line.profit;
        estimate.works.push_back(line);
        estimate.total.hours += line.hours;
        estimate.total.labour += line.labour;
        estimate.total.material += line.material;
        estimate.total.consumables += line.consumables;
        estimate.total.overhead += line.overhead;
        estimate.total.profit += line.profit;
        estimate.total.price += line.price;
    }
    estimate.crewRate = Money::cents(6'137);
    estimate.markup = Percent::basisPoints(2'137);
    estimate.margin = Percent::basisPoints(1'761);
    estimate.perManHour = Money::cents(9'393);
    BidSetup& setup = figures.setup;
    setup.scope = "Interior trim of one house, material and labor.";
    setup.inclusions = "One walk with your superintendent\nClean-up after each trip";
    setup.exclusions = "Painting and caulking of nail holes\nStair parts";
}

void SampleJob::fillOrder() {
    BuyList& buy = figures.buy;
    const auto stick = [&](Id<Profile> profile, Length length, int count, int spare) {
        buy.sticks.push_back({profile, length, count, spare, Money::cents(1'717)});
    };
    stick(casing, Length::feet(16), 9, 1);
    stick(casing, Length::feet(14), 4, 0);
    stick(casing, Length::inches(92) + Length::sixteenths(10), 3, 0);
    stick(stool, Length::feet(12), 4, 0);
    stick(base, Length::feet(16), 2, 1);
    stick(oak, Length::feet(8), 3, 0);
    buy.rack.push_back({casing, Length::feet(5), 2});
    buy.parts.push_back({PartUse::passageSet, "Passage set, black", 5, Money::cents(2'929), false});
    buy.parts.push_back({PartUse::doorStop, "Hinge stop", 6, Money::cents(313), true});
    buy.sticksCost = Money::cents(43'943);
}

} // namespace miterbook
