// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/sheets/dxf_lines.h"

#include <dxflib/dl_creationadapter.h>
#include <dxflib/dl_dxf.h>

#include <QTransform>

#include <cmath>
#include <map>
#include <numbers>
#include <sstream>

namespace miterbook {

namespace {

constexpr double farthest = 1e9; // drawing units that are believed
constexpr int deepestBlock = 6;  // blocks within blocks
constexpr double chordDegrees = 7.5;

struct DxfInsert {
    std::string block;
    QTransform where;
};

struct DxfBlock {
    std::vector<QLineF> lines;
    std::vector<DxfInsert> inserts;
};

/// Gathers what dxflib calls out while it reads.
class DxfGatherer final : public DL_CreationAdapter {
public:
    explicit DxfGatherer(std::size_t most)
        : m_most(most) {}

    void addBlock(const DL_BlockData& block) override {
        endPolyline();
        m_into = &m_blocks[block.name];
        m_base = QPointF(block.bpx, block.bpy);
    }
    void endBlock() override {
        endPolyline();
        m_into = &m_drawing;
        m_base = {};
    }
    void addLine(const DL_LineData& line) override { add({line.x1, line.y1}, {line.x2, line.y2}); }
    void addArc(const DL_ArcData& arc) override {
        const double sweep = arc.angle2 > arc.angle1 ? arc.angle2 - arc.angle1
                                                     : arc.angle2 + 360 - arc.angle1;
        addArc({arc.cx, arc.cy}, arc.radius, arc.angle1, std::min(sweep, 360.0));
    }
    void addCircle(const DL_CircleData& circle) override {
        addArc({circle.cx, circle.cy}, circle.radius, 0, 360);
    }
    void addPolyline(const DL_PolylineData& line) override {
        endPolyline();
        m_inPolyline = true;
        m_closed = line.flags & 1;
    }
    void addVertex(const DL_VertexData& vertex) override {
        const QPointF at(vertex.x, vertex.y);
        if (m_inPolyline && m_points > 0)
            addBulge(m_last, at, m_bulge);
        else
            m_first = at;
        m_last = at;
        m_bulge = vertex.bulge;
        ++m_points;
    }
    void endEntity() override { endPolyline(); }
    void endSequence() override { endPolyline(); }
    void addInsert(const DL_InsertData& insert) override {
        QTransform where;
        where.translate(insert.ipx - m_base.x(), insert.ipy - m_base.y());
        where.rotate(insert.angle);
        where.scale(insert.sx, insert.sy);
        m_into->inserts.push_back({insert.name, where});
    }
    void setVariableInt(const std::string& key, int value, int) override {
        if (key == "$INSUNITS")
            m_units = value;
    }

    bool isTooMuch() const { return m_tooMuch; }

    DxfLines take() {
        endPolyline();
        DxfLines all{{}, m_units};
        place(m_drawing, QTransform(), 0, all.lines);
        return all;
    }

private:
    void endPolyline() {
        if (m_inPolyline && m_closed && m_points > 2)
            addBulge(m_last, m_first, m_bulge);
        m_inPolyline = false;
        m_points = 0;
    }

    void add(QPointF a, QPointF b) {
        const double reach = std::max(
            {std::abs(a.x()), std::abs(a.y()), std::abs(b.x()), std::abs(b.y())});
        if (!(reach <= farthest)) // also what is no number
            return;
        if (m_count++ >= m_most) {
            m_tooMuch = true;
            return;
        }
        m_into->lines.push_back({a - m_base, b - m_base});
    }

    void addArc(QPointF centre, double radius, double from, double sweep) {
        if (!(radius > 0 && radius <= farthest) || !(std::abs(sweep) <= 360))
            return;
        const int steps = std::max(1, static_cast<int>(std::ceil(std::abs(sweep) / chordDegrees)));
        const auto at = [&](int i) {
            const double angle = (from + sweep * i / steps) * std::numbers::pi / 180.0;
            return centre + QPointF(radius * std::cos(angle), radius * std::sin(angle));
        };
        for (int i = 0; i < steps; ++i)
            add(at(i), at(i + 1));
    }

    /// A side of a polyline: straight, or an arc whose quarter angle has `bulge` for its tangent.
    void addBulge(QPointF a, QPointF b, double bulge) {
        const QPointF way = b - a;
        const double chord = std::hypot(way.x(), way.y());
        if (!(std::abs(bulge) > 1e-6 && std::abs(bulge) < 1e6) || !(chord > 0)) {
            add(a, b);
            return;
        }
        const double sweep = 4 * std::atan(bulge);
        const double radius = chord / 2 / std::sin(std::abs(sweep) / 2);
        const double off = chord / 2 / std::tan(sweep / 2);
        const QPointF centre = (a + b) / 2 + QPointF(-way.y(), way.x()) / chord * off;
        const double from = std::atan2(a.y() - centre.y(), a.x() - centre.x());
        addArc(centre, radius, from * 180 / std::numbers::pi, sweep * 180 / std::numbers::pi);
    }

    void place(
        const DxfBlock& block, const QTransform& where, int depth, std::vector<QLineF>& lines) {
        for (const QLineF& line : block.lines) {
            if (lines.size() >= m_most) {
                m_tooMuch = true;
                return;
            }
            const QLineF placed = where.map(line);
            if (std::abs(placed.x1()) <= farthest && std::abs(placed.y1()) <= farthest
                && std::abs(placed.x2()) <= farthest && std::abs(placed.y2()) <= farthest)
                lines.push_back(placed);
        }
        // Blocks that hold each other, or a great many inserts of nothing, come to an end too.
        for (const DxfInsert& insert : block.inserts) {
            const auto it = m_blocks.find(insert.block);
            if (it == m_blocks.end() || depth >= deepestBlock || ++m_inserts > m_most)
                continue;
            place(it->second, insert.where * where, depth + 1, lines);
        }
    }

    std::size_t m_most;
    std::size_t m_count = 0;
    std::size_t m_inserts = 0;
    bool m_tooMuch = false;
    int m_units = 0;
    std::map<std::string, DxfBlock> m_blocks;
    DxfBlock m_drawing;
    DxfBlock* m_into = &m_drawing;
    QPointF m_base;
    bool m_inPolyline = false;
    bool m_closed = false;
    int m_points = 0;
    QPointF m_first;
    QPointF m_last;
    double m_bulge = 0;
};

} // namespace

Result<DxfLines> readDxfLines(const std::string& content, std::size_t most) {
    std::istringstream stream(content);
    DxfGatherer gatherer(most);
    DL_Dxf reader;
    if (!reader.in(stream, &gatherer))
        return badInput("is no DXF that can be read; save it anew, or as a PDF.");
    DxfLines lines = gatherer.take();
    if (gatherer.isTooMuch())
        return badInput("has more lines than can be shown (" + std::to_string(most)
            + "); save the one floor alone, or as a PDF.");
    if (lines.lines.empty())
        return badInput("has no lines that can be drawn; save it anew, or as a PDF.");
    return lines;
}

} // namespace miterbook
