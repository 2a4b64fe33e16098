// SPDX-License-Identifier: GPL-3.0-or-later
#include "basics/amount_text.h"
#include "cut/saw_place.h"
#include "papers/floor_pen.h"
#include "papers/heading.h"
#include "plan/flight.h"
#include "plan/place.h"

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

constexpr double usualDepth = 4.5;

FloorPoint inches(PlanPoint point) {
    return {point.x.toInches(), point.y.toInches()};
}

/// Draws one level.
class FloorMaker {
public:
    FloorMaker(const WholePlan& whole, const Level& level, LengthStyle style)
        : m_whole(whole)
        , m_level(level)
        , m_style(style) {
        m_floor.title = oneLine(level.name);
        m_floor.metric = style.unit == LengthUnit::millimetres;
    }

    /// Nothing when no room of the level is drawn.
    std::optional<PaperFloor> make() {
        if (!findCorner())
            return std::nullopt;
        for (const Room& room : m_whole.rooms) {
            if (isHere(room))
                drawRoom(room);
        }
        for (const Stair& stair : m_whole.stairs)
            drawStair(stair);
        for (const Opening& opening : m_whole.openings)
            drawOpening(opening);
        if (const auto saw = sawPlaceOn(m_whole, m_level.id))
            drawSaw(*saw);
        return std::move(m_floor);
    }

private:
    bool isHere(const Room& room) const {
        return room.level == m_level.id && !room.outline.empty();
    }

    bool findCorner() {
        bool found = false;
        FloorPoint most;
        for (const Room& room : m_whole.rooms) {
            if (!isHere(room))
                continue;
            for (const PlanPoint& corner : room.outline) {
                const FloorPoint at = inches(corner);
                m_corner = found
                    ? FloorPoint{std::min(m_corner.x, at.x), std::min(m_corner.y, at.y)}
                    : at;
                most = found ? FloorPoint{std::max(most.x, at.x), std::max(most.y, at.y)} : at;
                found = true;
            }
        }
        constexpr double margin = 18; // for numbers outside of the walls
        m_corner = m_corner - FloorPoint{margin, margin};
        m_floor.width = most.x - m_corner.x + margin;
        m_floor.height = most.y - m_corner.y + margin;
        m_pen.emplace(m_floor, m_corner);
        return found;
    }

    /// Openings in one wall of the room, also those of the room behind it, as stretches of it.
    std::vector<std::pair<double, double>> gapsIn(const Room& room, std::size_t wall) const {
        std::vector<std::pair<double, double>> gaps;
        for (const Opening& opening : m_whole.openings) {
            const auto place = opening.room == room.id ? placeIn(room, opening)
                : opening.otherRoom == room.id         ? placeBehind(opening)
                                                       : std::nullopt;
            if (place && place->wall == wall) {
                const double half = opening.width.toInches() / 2;
                const double at = place->along.toInches();
                gaps.emplace_back(at - half, at + half);
            }
        }
        std::ranges::sort(gaps);
        return gaps;
    }

    /// Where a door stands in the room behind it.
    std::optional<WallPlace> placeBehind(const Opening& opening) const {
        const Room* room = m_whole.room(opening.room);
        const Room* behind = m_whole.room(opening.otherRoom);
        return room && behind ? placeInOther(*room, *behind, opening) : std::nullopt;
    }

    void drawRoom(const Room& room) {
        for (std::size_t i = 0; i < room.outline.size(); ++i) {
            const double weight = room.walls[i].base ? FloorPen::wall : FloorPen::bare;
            const double length = room.walls[i].length.toInches();
            const auto at = [&](double along) {
                return inches(pointOn(room.outline, i, Length::fromInches(along)));
            };
            double from = 0;
            for (const auto& [begin, end] : gapsIn(room, i)) {
                if (begin > from)
                    m_pen->line(at(from), at(begin), weight);
                from = std::max(from, end);
            }
            if (from < length)
                m_pen->line(at(from), at(length), weight);
        }
        for (const BaseBreak& each : room.breaks)
            drawBreak(room, each);
        const std::string name = room.name.empty() ? room.mark : room.name;
        m_pen->label(middleOf(room), name, true);
        m_floor.entries.push_back({oneLine(name), sizeOf(room), {}});
    }

    void drawBreak(const Room& room, const BaseBreak& each) {
        constexpr double depth = 24;
        const auto wall = static_cast<std::size_t>(each.wall) - 1;
        if (each.wall < 1 || wall >= room.outline.size())
            return;
        const FloorPoint a = inches(pointOn(room.outline, wall, each.from));
        const FloorPoint b = inches(pointOn(room.outline, wall, each.from + each.length));
        const FloorPoint way = along(room, wall);
        const FloorPoint in = FloorPoint{-way.y, way.x} * depth;
        m_pen->line(a, a + in, FloorPen::thin);
        m_pen->line(a + in, b + in, FloorPen::thin);
        m_pen->line(b + in, b, FloorPen::thin);
    }

    /// On the level that it climbs from and on the one above, where it comes up.
    void drawStair(const Stair& stair) {
        const bool here = stair.level == m_level.id;
        if (!here && !isJustBelow(stair.level))
            return;
        const FlightDrawing flight = flightOf(stair);
        for (const Outline& part : flight.parts)
            drawRound(part);
        for (const FlightDrawing::Riser& riser : flight.risers) {
            if (here && !riser.above)
                m_pen->line(inches(riser.a), inches(riser.b), FloorPen::thin);
        }
        drawAlong(flight.way);
        drawAlong(flight.arrow);
        if (flight.way.size() < 2)
            return;
        const FloorPoint foot = inches(here ? flight.way.front() : flight.way.back());
        const FloorPoint next = inches(here ? flight.way[1] : flight.way[flight.way.size() - 2]);
        const double length = std::hypot(next.x - foot.x, next.y - foot.y);
        constexpr double off = 12; // beside the first tread, on the line
        m_pen->label(
            foot + (next - foot) * (off / std::max(length, off)), here ? "UP" : "DN", false);
    }

    bool isJustBelow(Id<Level> level) const {
        const auto here = std::ranges::find(m_whole.levels, m_level.id, &Level::id);
        return here != m_whole.levels.begin() && here != m_whole.levels.end()
            && std::prev(here)->id == level;
    }

    void drawAlong(const std::vector<PlanPoint>& points) {
        for (std::size_t i = 0; i + 1 < points.size(); ++i)
            m_pen->line(inches(points[i]), inches(points[i + 1]), FloorPen::thin);
    }

    void drawRound(const Outline& outline) {
        drawAlong(outline);
        m_pen->line(inches(outline.back()), inches(outline.front()), FloorPen::thin);
    }

    static FloorPoint along(const Room& room, std::size_t wall) {
        const FloorPoint a = inches(room.outline[wall]);
        const FloorPoint b = inches(room.outline[wall + 1 == room.outline.size() ? 0 : wall + 1]);
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        return (b - a) * (1 / length);
    }

    void drawOpening(const Opening& opening) {
        const Room* room = m_whole.room(opening.room);
        const auto place = room && isHere(*room) ? placeIn(*room, opening) : std::nullopt;
        if (!place)
            return;
        const FloorPoint at = inches(pointOn(room->outline, place->wall, place->along));
        const FloorPoint way = along(*room, place->wall);
        const FloorPoint out = FloorPoint{way.y, -way.x}
            * (opening.wallThickness > Length() ? opening.wallThickness.toInches() : usualDepth);
        const FloorPoint half = way * (opening.width.toInches() / 2);
        m_pen->line(at - half, at - half + out, FloorPen::thin);
        m_pen->line(at + half, at + half + out, FloorPen::thin);
        if (opening.isWindow()) {
            for (const double part : {0.0, 0.5, 1.0})
                m_pen->line(at - half + out * part, at + half + out * part, FloorPen::thin);
        } else {
            drawLeaves(*m_pen, opening, at, half, out);
        }
        // By the door in its room where there is a room behind, else outside.
        constexpr double off = 9;
        const FloorPoint outward = out * (1 / std::hypot(out.x, out.y));
        m_pen->label(placeBehind(opening) ? at - outward * off : at + out + outward * off,
            opening.mark, false);
        m_floor.entries.push_back({oneLine(opening.mark),
            formatLength(opening.width, m_style) + " x " + formatLength(opening.height, m_style),
            oneLine(room->name.empty() ? room->mark : room->name)});
    }

    void drawSaw(const SawPlace& saw) {
        constexpr double reach = 10;
        const FloorPoint at{saw.spot.x.toInches(), saw.spot.y.toInches()};
        m_pen->line(at - FloorPoint{reach, 0}, at + FloorPoint{reach, 0}, FloorPen::wall);
        m_pen->line(at - FloorPoint{0, reach}, at + FloorPoint{0, reach}, FloorPen::wall);
        const Room* room = m_whole.room(saw.room);
        m_pen->label(at + wayToName(room, saw) * (reach + 8), "SAW", true);
        m_floor.entries.push_back(
            {"Saw stands best", formatRunWithUnit(saw.walked, m_style.unit, 0) + " to walk",
                room ? oneLine(room->name.empty() ? room->mark : room->name) : std::string()});
    }

    /// Below the saw; into the room where it stands against a wall.
    static FloorPoint wayToName(const Room* room, const SawPlace& saw) {
        const PlanPoint spot{saw.spot.x, saw.spot.y};
        const auto wall = room ? nearestWall(room->outline, spot) : std::nullopt;
        if (!wall || std::abs(wall->off.toInches()) > usualDepth)
            return {0, 1};
        const FloorPoint way = along(*room, wall->wall);
        return {-way.y, way.x};
    }

    std::string sizeOf(const Room& room) const {
        LengthStyle style = m_style;
        if (style.unit == LengthUnit::inches)
            style.unit = LengthUnit::feetInches;
        const bool rectangle = room.walls.size() == 4
            && room.walls[0].length == room.walls[2].length
            && room.walls[1].length == room.walls[3].length;
        if (rectangle)
            return formatLength(room.walls[0].length, style) + " x "
                + formatLength(room.walls[1].length, style);
        return floorText(
            static_cast<int>(std::lround(areaOf(room.outline).toDouble())), m_style.unit);
    }

    /// A point inside for the name: the middle of the largest of some stripes across the room.
    static FloorPoint middleOf(const Room& room) {
        FloorPoint least = inches(room.outline[0]);
        FloorPoint most = least;
        for (const PlanPoint& corner : room.outline) {
            const FloorPoint at = inches(corner);
            least = {std::min(least.x, at.x), std::min(least.y, at.y)};
            most = {std::max(most.x, at.x), std::max(most.y, at.y)};
        }
        const FloorPoint middle = (least + most) * 0.5;
        constexpr int stripes = 16;
        FloorPoint best = middle;
        double widest = -1;
        for (int row = 1; row < stripes; ++row) {
            double from = least.x;
            for (int i = 0; i <= stripes * 2; ++i) {
                const FloorPoint at{least.x + (most.x - least.x) * i / (stripes * 2),
                    least.y + (most.y - least.y) * row / stripes};
                if (encloses(room.outline, {Length::fromInches(at.x), Length::fromInches(at.y)})) {
                    // The wider the better, and near the middle of the height.
                    const double score = at.x - from - std::abs(at.y - middle.y) * 0.5;
                    if (score > widest) {
                        widest = score;
                        best = {(at.x + from) / 2, at.y};
                    }
                } else {
                    from = at.x;
                }
            }
        }
        return best;
    }

    const WholePlan& m_whole;
    const Level& m_level;
    LengthStyle m_style;
    PaperFloor m_floor;
    FloorPoint m_corner;
    std::optional<FloorPen> m_pen;
};

} // namespace

Paper planPaper(const PaperJob& job, const JobFigures& figures) {
    Paper paper = beginPaper("plan", "Marked plan", job);
    addPlan(paper, job);
    addPlace(paper, job, "Address");
    const LengthStyle style = job.book.prices.shop().lengths();
    int drawn = 0;
    for (const Level& level : figures.whole.levels) {
        if (job.level && level.id != job.level)
            continue;
        if (auto floor = FloorMaker(figures.whole, level, style).make()) {
            paper.blocks.emplace_back(*std::move(floor));
            ++drawn;
        }
    }
    if (drawn == 0)
        paper.blocks.emplace_back(
            Paragraph{Paragraph::Style::body, {"No room of this plan is drawn yet."}});
    return paper;
}

} // namespace miterbook
