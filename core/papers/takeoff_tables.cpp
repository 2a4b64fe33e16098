// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/takeoff_tables.h"

#include "basics/quote.h"
#include "papers/cells.h"
#include "papers/plain_text.h"
#include "papers/takeoff_rows.h"

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

using enum PaperColumn::Align;

void addRow(PaperTable& table, std::vector<Cell> cells) {
    table.rows.push_back({PaperTable::Kind::plain, std::move(cells)});
}

Cell workCell(PieceOfWork work) {
    return Cell::of(capitalised(word(work)));
}

Cell unitCell(const TakeoffRow& row, LengthUnit written) {
    return Cell::of(unitText(itemUnit(row.item), written));
}

Cell piecesCell(int pieces) {
    return pieces > 0 ? countCell(pieces) : Cell();
}

/// Degrees to the tenth, as a saw can be set: "45", "22.5".
std::string degrees(double value) {
    const auto tenths = static_cast<std::int64_t>(std::llround(value * 10));
    return std::to_string(tenths / 10)
        + (tenths % 10 == 0 ? "" : '.' + std::to_string(std::abs(tenths % 10)));
}

std::string endText(const PieceEnd& end) {
    std::string text(word(end.cut));
    if (end.sawAngle != 0.0)
        text += ' ' + degrees(end.sawAngle);
    if (end.bevel != 0.0)
        text += " bevel " + degrees(end.bevel);
    return text;
}

std::string endsText(const Piece& piece) {
    const std::string left = endText(piece.left);
    const std::string right = endText(piece.right);
    return left == right ? left : left + " / " + right;
}

template <class Share>
void findShares(
    const std::vector<Share>& shares, std::size_t place, std::map<Origins, std::size_t>& places) {
    for (const Share& share : shares)
        places.emplace(share.source.row, place);
}

} // namespace

PlaceFinder::PlaceFinder(const std::vector<PlaceTotals>& places) {
    for (std::size_t i = 0; i < places.size(); ++i) {
        for (const ProfileTotal& total : places[i].totals.profiles)
            findShares(total.shares, i, m_places);
        for (const TaskTotal& total : places[i].totals.tasks)
            findShares(total.shares, i, m_places);
        for (const PartTotal& total : places[i].totals.parts)
            findShares(total.shares, i, m_places);
    }
}

std::ptrdiff_t PlaceFinder::placeOf(const Source& source) const {
    const auto it = m_places.find(source.row);
    return it == m_places.end() ? -1 : static_cast<std::ptrdiff_t>(it->second);
}

std::vector<LevelPlaces> byLevel(const std::vector<PlaceTotals>& places, const WholePlan& plan) {
    std::vector<LevelPlaces> levels;
    for (std::size_t first = 0; first < places.size();) {
        std::size_t end = first;
        while (end < places.size() && places[end].level == places[first].level)
            ++end;
        const Level* level = plan.level(places[first].level);
        levels.push_back({level ? oneLine(level->name) : std::string("Whole plan"), first,
            std::span(places).subspan(first, end - first)});
        first = end;
    }
    return levels;
}

std::string TakeoffTables::roomName(const PlaceTotals& place) const {
    if (const Room* room = figures.whole.room(place.room))
        return joined({oneLine(room->mark), oneLine(room->name)}, " ");
    return place.level ? "No room" : "Plan";
}

PaperTable TakeoffTables::sums() const {
    const LengthUnit written = prices.shop().unit;
    PaperTable table;
    table.title = "In all";
    table.columns = {{"Piece of work", left, 22, true}, {"Item", left, 44}, {"Amount", right, 14},
        {"Unit", left, 10}, {"Pieces", right, 10}};
    for (const TakeoffRow& row : summedRows(places, written))
        addRow(table,
            {workCell(row.work), Cell::of(itemName(row.item, prices)), quantityCell(row.amount),
                unitCell(row, written), piecesCell(row.pieces)});
    return table;
}

PaperTable TakeoffTables::amounts(const LevelPlaces& level) const {
    const LengthUnit written = prices.shop().unit;
    PaperTable table;
    table.title = level.name;
    table.columns = {{"Room", left, 22, true}, {"Piece of work", left, 15, true},
        {"Item", left, 33}, {"Amount", right, 10}, {"Unit", left, 8}, {"Pieces", right, 8},
        {"From", left, 32}};
    for (const PlaceTotals& place : level.places) {
        for (const TakeoffRow& row : takeoffRows(place.totals, written))
            addRow(table,
                {Cell::of(roomName(place)), workCell(row.work),
                    Cell::of(itemName(row.item, prices)), quantityCell(row.amount),
                    unitCell(row, written), piecesCell(row.pieces), Cell::of(row.from)});
    }
    return table;
}

PaperTable TakeoffTables::runs(const LevelPlaces& level) const {
    const LengthUnit written = prices.shop().unit;
    PaperTable table;
    table.title = level.name + ": runs and corners";
    table.columns = {{"Room", left, 26, true}, {"Profile", left, 34},
        {"Net, " + unitText(Unit::linearFoot, written), right, 14}, {"Inside corners", right, 14},
        {"Outside corners", right, 14}, {"Splices", right, 14}};
    for (std::size_t i = 0; i < level.places.size(); ++i) {
        for (const RunCorners& run : figures.takeoff.runs) {
            if (finder.placeOf(run.source) != static_cast<std::ptrdiff_t>(level.first + i))
                continue;
            addRow(table,
                {Cell::of(roomName(level.places[i])),
                    Cell::of(std::string(prices.profileName(run.profile))),
                    quantityCell(runSaid(run.net, written)), countCell(run.inside),
                    countCell(run.outside), countCell(run.splices)});
        }
    }
    return table;
}

PaperTable TakeoffTables::pieces(const LevelPlaces& level) const {
    const LengthStyle style = prices.shop().lengths();
    PaperTable table;
    table.title = level.name + ": pieces";
    table.columns = {{"Room", left, 21, true}, {"From", left, 16, true}, {"Piece", left, 20},
        {"Profile", left, 22}, {"Count", right, 9}, {lengthTitle("Short point", style), right, 13},
        {lengthTitle("Long point", style), right, 13}, {"Ends", left, 28}};
    for (std::size_t i = 0; i < level.places.size(); ++i) {
        for (const Piece& piece : figures.takeoff.pieces) {
            if (finder.placeOf(piece.source) != static_cast<std::ptrdiff_t>(level.first + i))
                continue;
            addRow(table,
                {Cell::of(roomName(level.places[i])), Cell::of(oneLine(piece.source.name)),
                    Cell::of(piece.part), Cell::of(std::string(prices.profileName(piece.profile))),
                    countCell(piece.count), lengthCell(piece.shortPoint, style),
                    lengthCell(piece.longPoint, style), Cell::of(endsText(piece))});
        }
    }
    return table;
}

} // namespace miterbook
