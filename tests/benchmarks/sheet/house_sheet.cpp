// SPDX-License-Identifier: GPL-3.0-or-later
#include "sheet/house_sheet.h"

#include "bid/estimate.h"
#include "sheet/flat_sheet.h"

#include <map>

namespace miterbook {

namespace {

double dollars(Money money) {
    return static_cast<double>(money.cents()) / 100;
}

double minutesFor(const PriceBook& prices, Task task) {
    const LabourRate* rate = prices.rate(task);
    return rate ? rate->minutes.toDouble() : 0;
}

/// What a foot of a profile costs in the stick that is cheapest by the foot.
double footOf(const PriceBook& prices, Id<Profile> profile) {
    double least = 0;
    for (const Stick& stick : prices.sticksOf(profile)) {
        const double foot = dollars(stick.price) / (stick.length.toInches() / 12);
        if (least == 0 || foot < least)
            least = foot;
    }
    return least;
}

/// The formulas of "Sums", by name; a later one may name an earlier one's cell.
class SumsTable {
public:
    explicit SumsTable(FlatSheet& sheet)
        : m_sheet(sheet) {
        m_sheet.beginTable("Sums");
    }
    void add(const std::string& name, const std::string& formula) {
        m_sheet.beginRow();
        m_sheet.word(name);
        m_sheet.formula(formula);
        m_sheet.endRow();
        m_cells[name] = "[.B" + std::to_string(m_cells.size() + 1) + "]";
    }
    const std::string& cell(const std::string& name) const { return m_cells.at(name); }
    void end() { m_sheet.endTable(); }

private:
    FlatSheet& m_sheet;
    std::map<std::string, std::string> m_cells;
};

std::string column(std::string_view table, char letter, std::size_t rows) {
    return "[$" + std::string(table) + "." + letter + "1:." + letter + std::to_string(rows) + "]";
}

std::string hoursFormula(const std::string& quantity, double minutes) {
    return "ROUND(" + quantity + "*" + FlatSheet::digits(minutes) + ";0)";
}

void addSums(FlatSheet& sheet, const PlainHouse& house, const BidSetup& setup) {
    const PriceBook& prices = house.prices;
    const Plan& plan = house.whole.plan;
    const std::size_t openings = house.whole.openings.size();
    const std::size_t rooms = house.whole.rooms.size();
    const auto countOf = [&](const char* kind) {
        return "COUNTIF(" + column("Openings", 'A', openings) + ";\"" + kind + "\")";
    };
    const std::string longSides = "SUM(" + column("Openings", 'E', openings) + ")";
    SumsTable sums(sheet);
    sums.add("casing, ft", "SUM(" + column("Openings", 'D', openings) + ")");
    sums.add("base, ft", "SUM(" + column("Rooms", 'C', rooms) + ")");
    sums.add("shoe, ft", "SUM(" + column("Rooms", 'C', rooms) + ")");
    const std::string waste = FlatSheet::digits(1 + setup.waste.fraction());
    const auto stick = [&](const std::string& name, Id<Profile> profile) {
        return "ROUND(" + sums.cell(name) + "*" + waste + "*"
            + FlatSheet::digits(footOf(prices, profile)) + ";2)";
    };
    const std::string sticks = stick("casing, ft", plan.windowCasing) + "+"
        + stick("base, ft", plan.base) + "+" + stick("shoe, ft", plan.shoe);
    sums.add("sticks", sticks);
    sums.add("material with tax",
        sums.cell("sticks") + "+ROUND(" + sums.cell("sticks") + "*"
            + FlatSheet::digits(prices.terms().materialTax.fraction()) + ";2)");
    std::string consumables = "0";
    const std::string feet = "(" + sums.cell("casing, ft") + "+" + sums.cell("base, ft") + "+"
        + sums.cell("shoe, ft") + ")";
    for (const auto& [id, each] : prices.of<Consumable>())
        consumables += "+ROUND(" + feet + "*" + FlatSheet::digits(dollars(each.price)) + "/"
            + std::to_string(each.feetEach) + ";2)";
    sums.add("consumables", consumables);
    const std::vector<std::string> minutes{
        hoursFormula(countOf("D"), minutesFor(prices, Task::prehungDoor)),
        hoursFormula(countOf("W"), minutesFor(prices, Task::pictureFrameWindow)),
        hoursFormula(longSides, minutesFor(prices, Task::longSide)),
        hoursFormula(sums.cell("base, ft"), minutesFor(prices, Task::base)),
        hoursFormula(sums.cell("shoe, ft"), minutesFor(prices, Task::shoe)),
        hoursFormula(std::to_string(setup.trips), minutesFor(prices, Task::trip))};
    std::string allMinutes = "0";
    std::string labour = "0";
    for (const std::string& line : minutes) {
        allMinutes += "+" + line;
        labour += "+ROUND(" + line + "/60*" + FlatSheet::digits(dollars(prices.crewRate())) + ";2)";
    }
    sums.add("hours", "(" + allMinutes + ")/60");
    sums.add("labour", labour);
    const std::string direct = "(" + sums.cell("labour") + "+" + sums.cell("material with tax")
        + "+" + sums.cell("consumables") + ")";
    sums.add(
        "overhead", "ROUND(" + direct + "*" + FlatSheet::digits(setup.overhead.fraction()) + ";2)");
    sums.add("cost", direct + "+" + sums.cell("overhead"));
    sums.add("price",
        "ROUND(" + sums.cell("cost") + "*" + FlatSheet::digits(1 + setup.profit.fraction())
            + ";2)");
    sums.end();
}

void addOpenings(FlatSheet& sheet, const PlainHouse& house) {
    const Practice& practice = house.prices.practice();
    const Profile* casing = house.prices.profile(house.whole.plan.windowCasing);
    const std::string past = FlatSheet::digits(
        practice.reveal.toInches() + casing->width.toInches());
    const std::string longest = FlatSheet::digits(practice.longSide.toInches());
    sheet.beginTable("Openings");
    for (std::size_t i = 0; i < house.whole.openings.size(); ++i) {
        const Opening& opening = house.whole.openings[i];
        const std::string at = std::to_string(i + 1);
        const std::string width = "[.B" + at + "]";
        const std::string height = "[.C" + at + "]";
        const std::string frame = "2*(" + width + "+2*" + past + ")+2*(" + height + "+2*" + past
            + ")";
        const std::string bothSides = "2*(" + width + "+2*" + past + "+2*(" + height + "+" + past
            + "))";
        sheet.beginRow();
        sheet.word(opening.isWindow() ? "W" : "D");
        sheet.number(opening.width.toInches());
        sheet.number(opening.height.toInches());
        sheet.formula("IF([.A" + at + "]=\"W\";" + frame + ";" + bothSides + ")/12");
        // Sides of windows that take two hands more; a door's long legs are in its own rate.
        sheet.formula("IF([.A" + at + "]=\"W\";2*((" + width + "+2*" + past + ">" + longest + ")+("
            + height + "+2*" + past + ">" + longest + "));0)");
        sheet.endRow();
    }
    sheet.endTable();
}

void addRooms(FlatSheet& sheet, const PlainHouse& house) {
    sheet.beginTable("Rooms");
    for (std::size_t i = 0; i < house.whole.rooms.size(); ++i) {
        const Room& room = house.whole.rooms[i];
        const std::string at = std::to_string(i + 1);
        sheet.beginRow();
        sheet.number(room.walls[0].length.toInches());
        sheet.number(room.walls[1].length.toInches());
        sheet.formula("2*([.A" + at + "]+[.B" + at + "])/12");
        sheet.endRow();
    }
    sheet.endTable();
}

double feetOf(const Takeoff& takeoff, Id<Profile> profile) {
    Length running;
    for (const Piece& piece : takeoff.pieces) {
        if (piece.profile == profile)
            running += piece.longPoint * piece.count;
    }
    return running.toInches() / 12;
}

} // namespace

std::string houseSheet(const PlainHouse& house, const BidSetup& setup) {
    FlatSheet sheet;
    addSums(sheet, house, setup);
    addOpenings(sheet, house);
    addRooms(sheet, house);
    return sheet.take();
}

std::vector<SheetSum> programSums(const PlainHouse& house, const BidSetup& setup) {
    const Plan& plan = house.whole.plan;
    const Takeoff takeoff = takeOff(house.whole, house.prices, setup.trips);
    const Estimate made = estimate(takeoff, {}, house.prices, setup, 0);
    const WorkTotal& total = made.total;
    constexpr double cent = 0.0101;
    return {{"casing, ft", feetOf(takeoff, plan.windowCasing), 0.001},
        {"base, ft", feetOf(takeoff, plan.base), 0.001},
        {"shoe, ft", feetOf(takeoff, plan.shoe), 0.001},
        {"material with tax", dollars(total.material), cent},
        {"consumables", dollars(total.consumables), cent},
        {"hours", total.hours.toDouble(), 0.0001}, {"labour", dollars(total.labour), cent},
        {"overhead", dollars(total.overhead), cent}, {"cost", dollars(total.cost()), cent},
        {"price", dollars(total.price), cent}};
}

} // namespace miterbook
