// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/floor_setter.h"

#include "printing/printable_text.h"

#include <QLineF>
#include <QRectF>
#include <QStringList>

#include <algorithm>
#include <limits>
#include <span>

namespace miterbook {

namespace {

struct UsualScale {
    double ratio; ///< of the house to the paper
    const char* words;
};

constexpr UsualScale footScales[] = {{24, "1/2\" = 1'"}, {32, "3/8\" = 1'"}, {48, "1/4\" = 1'"},
    {64, "3/16\" = 1'"}, {96, "1/8\" = 1'"}, {128, "3/32\" = 1'"}, {192, "1/16\" = 1'"}};
/// Of ISO 5455 [pub, from memory]: 1:20, 1:50, 1:100, 1:200.
constexpr UsualScale metreScales[] = {
    {20, "1:20"}, {50, "1:50"}, {100, "1:100"}, {200, "1:200"}};

std::span<const UsualScale> usualScales(bool metric) {
    return metric ? std::span<const UsualScale>(metreScales) : footScales;
}

constexpr double pointsInInch = 72;
constexpr double wallWeight = 1; ///< points; what is thinner is no wall

/// Where a label is tried, nearer places first, in its own widths and heights.
std::vector<QPointF> labelSteps(int rings) {
    std::vector<QPointF> steps{QPointF(0, 0)};
    for (int ring = 1; ring <= rings; ++ring) {
        const double down = ring * 0.5;
        const double across = ring * 0.25;
        for (const QPointF& way : {QPointF(0, -1), QPointF(0, 1), QPointF(1, 0), QPointF(-1, 0),
                 QPointF(1, -1), QPointF(1, 1), QPointF(-1, -1), QPointF(-1, 1)})
            steps.emplace_back(way.x() * across, way.y() * down);
    }
    return steps;
}

class FloorSetter {
public:
    FloorSetter(const PaperFloor& floor, const PaperFonts& fonts, QSizeF area)
        : m_floor(floor)
        , m_fonts(fonts)
        , m_area(area)
        , m_top(fonts.lineHeight(TextRole::heading) + fonts.points(6)) {}

    SetBlock set() {
        findScale();
        head();
        for (const PaperFloor::Line& line : m_floor.lines) {
            const QLineF placed(place(line.x1, line.y1), place(line.x2, line.y2));
            m_lines.push_back({placed, line.weight});
            m_block.marks.emplace_back(
                LineMark{placed.p1(), placed.p2(), m_fonts.points(line.weight)});
        }
        for (const bool bold : {false, true}) { // numbers first: they must be by their opening
            for (const PaperFloor::Label& label : m_floor.labels) {
                if (label.bold == bold)
                    write(label);
            }
        }
        m_block.height = m_top + m_floor.height * m_scale;
        return std::move(m_block);
    }

private:
    void findScale() {
        const double across = m_area.width() / std::max(m_floor.width, 1.0);
        const double down = (m_area.height() - m_top) / std::max(m_floor.height, 1.0);
        const double fits = std::min(across, down);
        m_scale = fits;
        m_words = QStringLiteral("not to scale");
        for (const UsualScale& each : usualScales(m_floor.metric)) {
            const double scale = m_fonts.points(pointsInInch) / each.ratio;
            if (scale <= fits) {
                m_scale = scale;
                m_words = QString::fromUtf8(each.words);
                return;
            }
        }
    }

    void head() {
        m_block.marks.emplace_back(TextMark{
            TextRole::heading, {0, m_fonts.ascent(TextRole::heading)}, printable(m_floor.title)});
        const double left = m_area.width() - m_fonts.width(TextRole::small, m_words);
        m_block.marks.emplace_back(
            TextMark{TextRole::small, {left, m_fonts.ascent(TextRole::heading)}, m_words});
    }

    QPointF place(double x, double y) const {
        const double spare = m_area.width() - m_floor.width * m_scale;
        return {spare / 2 + x * m_scale, m_top + y * m_scale};
    }

    /// As near to its place as can be: over no other label, over as few lines as can be, and on
    /// the same side of walls. A name that lies over lines is tried in two lines too.
    void write(const PaperFloor::Label& label) {
        const QString text = printable(label.text);
        Spot best = spotFor(label, {text});
        const qsizetype space = text.indexOf(QChar(u' '), text.size() / 3);
        if (label.bold && best.lines > 0 && space > 0) {
            const Spot parted = spotFor(label, {text.left(space), text.mid(space + 1)});
            if (parted.lines < best.lines)
                best = parted;
        }
        put(roleOf(label), best);
    }

    static TextRole roleOf(const PaperFloor::Label& label) {
        return label.bold ? TextRole::smallBold : TextRole::small;
    }

    /// Words one below the other, where they lie and over how many lines.
    struct Spot {
        QStringList words;
        QRectF rect;
        std::ptrdiff_t lines = std::numeric_limits<std::ptrdiff_t>::max();
    };

    Spot spotFor(const PaperFloor::Label& label, const QStringList& words) const {
        const TextRole role = roleOf(label);
        QSizeF size(0, m_fonts.lineHeight(role) * static_cast<double>(words.size()));
        for (const QString& word : words)
            size.setWidth(std::max(size.width(), m_fonts.width(role, word) + m_fonts.points(2)));
        const QPointF centre = place(label.x, label.y);
        const QPointF toCorner(size.width() / 2, size.height() / 2);
        Spot best{words, QRectF(centre - toCorner, size)};
        for (const QPointF& step : label.bold ? m_nearSteps : m_steps) {
            const QPointF at = centre + QPointF(step.x() * size.width(), step.y() * size.height());
            const QRectF rect(at - toCorner, size);
            if (isTaken(rect) || isBehind(label, centre, at))
                continue;
            const auto lines = std::ranges::count_if(
                m_lines, [&](const Placed& each) { return liesOver(rect, each.line); });
            if (lines < best.lines) {
                best.lines = lines;
                best.rect = rect;
            }
        }
        return best;
    }

    bool isTaken(const QRectF& rect) const {
        return std::ranges::any_of(
            m_taken, [&](const QRectF& each) { return each.intersects(rect); });
    }

    /// Whether a wall lies on the way; for a name any line, as it must not go out by a door.
    bool isBehind(const PaperFloor::Label& label, QPointF from, QPointF to) const {
        const QLineF way(from, to);
        return std::ranges::any_of(m_lines, [&](const Placed& each) {
            return (label.bold || each.weight >= wallWeight) && crosses(way, each.line);
        });
    }

    static bool crosses(const QLineF& a, const QLineF& b) {
        return a.intersects(b, nullptr) == QLineF::BoundedIntersection;
    }

    static bool liesOver(const QRectF& rect, const QLineF& line) {
        return rect.contains(line.p1()) || rect.contains(line.p2())
            || crosses(line, {rect.topLeft(), rect.bottomRight()})
            || crosses(line, {rect.topRight(), rect.bottomLeft()});
    }

    void put(TextRole role, const Spot& spot) {
        m_taken.push_back(spot.rect);
        if (spot.lines > 0)
            m_block.marks.emplace_back(ClearMark{spot.rect}); // words before treads and leaves
        double top = spot.rect.top();
        for (const QString& word : spot.words) {
            const double left = spot.rect.center().x() - m_fonts.width(role, word) / 2;
            m_block.marks.emplace_back(TextMark{role, {left, top + m_fonts.ascent(role)}, word});
            top += m_fonts.lineHeight(role);
        }
    }

    struct Placed {
        QLineF line;
        double weight = 0;
    };

    const PaperFloor& m_floor;
    const PaperFonts& m_fonts;
    QSizeF m_area;
    double m_top;
    double m_scale = 1; ///< dots for one inch of the house
    QString m_words;
    std::vector<QRectF> m_taken;
    std::vector<Placed> m_lines;
    const std::vector<QPointF> m_steps = labelSteps(8);
    const std::vector<QPointF> m_nearSteps = labelSteps(3); ///< a name stays in its room
    SetBlock m_block;
};

} // namespace

void setFloor(
    const PaperFloor& floor, const PaperFonts& fonts, QSizeF area, std::vector<Slab>& slabs) {
    Slab slab;
    slab.before = fonts.points(8);
    slab.block = FloorSetter(floor, fonts, area).set();
    slabs.push_back(std::move(slab));
}

} // namespace miterbook
