// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/saw_place.h"
#include "papers/heading.h"
#include "papers/plain_text.h"
#include "plan/place.h"

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

constexpr double wallWeight = 1.3;
constexpr double bareWeight = 0.5;
constexpr double thinWeight = 0.6;
constexpr double usualDepth = 4.5;

struct Vec {
    double x = 0;
    double y = 0;
    friend Vec operator+(Vec a, Vec b) { return {a.x + b.x, a.y + b.y}; }
    friend Vec operator-(Vec a, Vec b) { return {a.x - b.x, a.y - b.y}; }
    friend Vec operator*(Vec a, double n) { return {a.x * n, a.y * n}; }
};

Vec inches(PlanPoint point) {
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
    }

    /// Nothing when no room of the level is drawn.
    std::optional<PaperFloor> make() {
        if (!findCorner())
            return std::nullopt;
        for (const Room& room : m_whole.rooms) {
            if (isHere(room))
                drawRoom(room);
        }
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
        Vec most;
        for (const Room& room : m_whole.rooms) {
            if (!isHere(room))
                continue;
            for (const PlanPoint& corner : room.outline) {
                const Vec at = inches(corner);
                m_corner = found ? Vec{std::min(m_corner.x, at.x), std::min(m_corner.y, at.y)} : at;
                most = found ? Vec{std::max(most.x, at.x), std::max(most.y, at.y)} : at;
                found = true;
            }
        }
        constexpr double margin = 18; // for numbers outside of the walls
        m_corner = m_corner - Vec{margin, margin};
        m_floor.width = most.x - m_corner.x + margin;
        m_floor.height = most.y - m_corner.y + margin;
        return found;
    }

    void line(Vec a, Vec b, double weight) {
        a = a - m_corner;
        b = b - m_corner;
        m_floor.lines.push_back({a.x, a.y, b.x, b.y, weight});
    }

    void label(Vec at, const std::string& text, bool bold) {
        at = at - m_corner;
        if (!text.empty())
            m_floor.labels.push_back({at.x, at.y, oneLine(text), bold});
    }

    /// Openings of the room's own in one wall, as stretches of it.
    std::vector<std::pair<double, double>> gapsIn(const Room& room, std::size_t wall) const {
        std::vector<std::pair<double, double>> gaps;
        for (const Opening& opening : m_whole.openings) {
            if (opening.room != room.id)
                continue;
            const auto place = placeIn(room, opening);
            if (place && place->wall == wall) {
                const double half = opening.width.toInches() / 2;
                const double at = place->along.toInches();
                gaps.emplace_back(at - half, at + half);
            }
        }
        std::ranges::sort(gaps);
        return gaps;
    }

    void drawRoom(const Room& room) {
        for (std::size_t i = 0; i < room.outline.size(); ++i) {
            const double weight = room.walls[i].base ? wallWeight : bareWeight;
            const double length = room.walls[i].length.toInches();
            const auto at = [&](double along) {
                return inches(pointOn(room.outline, i, Length::fromInches(along)));
            };
            double from = 0;
            for (const auto& [begin, end] : gapsIn(room, i)) {
                if (begin > from)
                    line(at(from), at(begin), weight);
                from = std::max(from, end);
            }
            if (from < length)
                line(at(from), at(length), weight);
        }
        for (const BaseBreak& each : room.breaks)
            drawBreak(room, each);
        const std::string name = room.name.empty() ? room.mark : room.name;
        label(middleOf(room), name, true);
        m_floor.entries.push_back({oneLine(name), sizeOf(room), {}});
    }

    void drawBreak(const Room& room, const BaseBreak& each) {
        constexpr double depth = 24;
        const auto wall = static_cast<std::size_t>(each.wall) - 1;
        if (each.wall < 1 || wall >= room.outline.size())
            return;
        const Vec a = inches(pointOn(room.outline, wall, each.from));
        const Vec b = inches(pointOn(room.outline, wall, each.from + each.length));
        const Vec way = along(room, wall);
        const Vec in = Vec{-way.y, way.x} * depth;
        line(a, a + in, thinWeight);
        line(a + in, b + in, thinWeight);
        line(b + in, b, thinWeight);
    }

    static Vec along(const Room& room, std::size_t wall) {
        const Vec a = inches(room.outline[wall]);
        const Vec b = inches(room.outline[wall + 1 == room.outline.size() ? 0 : wall + 1]);
        const double length = std::hypot(b.x - a.x, b.y - a.y);
        return (b - a) * (1 / length);
    }

    void drawOpening(const Opening& opening) {
        const Room* room = m_whole.room(opening.room);
        const auto place = room && isHere(*room) ? placeIn(*room, opening) : std::nullopt;
        if (!place)
            return;
        const Vec at = inches(pointOn(room->outline, place->wall, place->along));
        const Vec way = along(*room, place->wall);
        const Vec out = Vec{way.y, -way.x}
            * (opening.wallThickness > Length() ? opening.wallThickness.toInches() : usualDepth);
        const Vec half = way * (opening.width.toInches() / 2);
        line(at - half, at - half + out, thinWeight);
        line(at + half, at + half + out, thinWeight);
        if (opening.isWindow()) {
            for (const double part : {0.0, 0.5, 1.0})
                line(at - half + out * part, at + half + out * part, thinWeight);
        } else if (opening.isDoor()) {
            drawLeaf(opening, at, half, out);
        }
        const double outside = std::hypot(out.x, out.y);
        label(at + out * (1 + 9 / outside), opening.mark, false);
        m_floor.entries.push_back({oneLine(opening.mark),
            formatLength(opening.width, m_style) + " x " + formatLength(opening.height, m_style),
            oneLine(room->name.empty() ? room->mark : room->name)});
    }

    /// A leaf that stands open at a right angle, with the way it swings as a few short lines.
    void drawLeaf(const Opening& opening, Vec at, Vec half, Vec out) {
        const bool swings = opening.kind == OpeningKind::prehungDoor
            || opening.kind == OpeningKind::exteriorDoor;
        if (!swings) {
            line(at - half + out * 0.5, at + half + out * 0.5, thinWeight);
            return;
        }
        const double length = 2 * std::hypot(half.x, half.y);
        const double depth = std::hypot(out.x, out.y);
        const Vec hinge = opening.hand == Hand::right ? at + half : at - half;
        const Vec shut = (opening.hand == Hand::right ? half * -2 : half * 2);
        const Vec open = out * (-length / depth);
        line(hinge, hinge + open, thinWeight);
        constexpr int steps = 8;
        Vec from = hinge + open;
        for (int i = 1; i <= steps; ++i) {
            const double turn = i * 1.5707963267948966 / steps;
            const Vec to = hinge + open * std::cos(turn) + shut * std::sin(turn);
            line(from, to, bareWeight);
            from = to;
        }
    }

    void drawSaw(const SawPlace& saw) {
        constexpr double reach = 10;
        const Vec at{saw.spot.x.toInches(), saw.spot.y.toInches()};
        line(at - Vec{reach, 0}, at + Vec{reach, 0}, wallWeight);
        line(at - Vec{0, reach}, at + Vec{0, reach}, wallWeight);
        label(at + Vec{0, reach + 8}, "SAW", true);
        const Room* room = m_whole.room(saw.room);
        m_floor.entries.push_back({"Saw stands best", formatFeet(saw.walked, 0) + " ft to walk",
            room ? oneLine(room->name.empty() ? room->mark : room->name) : std::string()});
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
        return std::to_string(std::lround(areaOf(room.outline).toDouble())) + " sq ft";
    }

    /// A point inside for the name: the middle of the largest of some stripes across the room.
    static Vec middleOf(const Room& room) {
        Vec least = inches(room.outline[0]);
        Vec most = least;
        for (const PlanPoint& corner : room.outline) {
            const Vec at = inches(corner);
            least = {std::min(least.x, at.x), std::min(least.y, at.y)};
            most = {std::max(most.x, at.x), std::max(most.y, at.y)};
        }
        const Vec middle = (least + most) * 0.5;
        constexpr int stripes = 16;
        Vec best = middle;
        double widest = -1;
        for (int row = 1; row < stripes; ++row) {
            double from = least.x;
            for (int i = 0; i <= stripes * 2; ++i) {
                const Vec at{least.x + (most.x - least.x) * i / (stripes * 2),
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
    Vec m_corner;
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
