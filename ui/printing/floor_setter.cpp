// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/floor_setter.h"

#include "printing/printable_text.h"

#include <QRectF>

#include <algorithm>
#include <array>

namespace miterbook {

namespace {

struct UsualScale {
    double paperInchesToFoot;
    const char* words;
};

constexpr std::array usualScales{UsualScale{0.5, "1/2\" = 1'"}, UsualScale{0.375, "3/8\" = 1'"},
    UsualScale{0.25, "1/4\" = 1'"}, UsualScale{0.1875, "3/16\" = 1'"},
    UsualScale{0.125, "1/8\" = 1'"}, UsualScale{0.09375, "3/32\" = 1'"},
    UsualScale{0.0625, "1/16\" = 1'"}};

constexpr double pointsInInch = 72;

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
        for (const PaperFloor::Line& line : m_floor.lines)
            m_block.marks.emplace_back(LineMark{
                place(line.x1, line.y1), place(line.x2, line.y2), m_fonts.points(line.weight)});
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
        for (const UsualScale& each : usualScales) {
            const double scale = m_fonts.points(each.paperInchesToFoot * pointsInInch) / 12;
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

    void write(const PaperFloor::Label& label) {
        const TextRole role = label.bold ? TextRole::smallBold : TextRole::small;
        const QString text = printable(label.text);
        const QSizeF size(m_fonts.width(role, text) + m_fonts.points(2), m_fonts.lineHeight(role));
        const QPointF centre = place(label.x, label.y);
        QRectF rect;
        // Round about, nearer places first.
        for (int ring = 0; ring < 6; ++ring) {
            for (const QPointF& way :
                {QPointF(0, -1), QPointF(0, 1), QPointF(1, 0), QPointF(-1, 0)}) {
                const QPointF at = centre
                    + QPointF(way.x() * ring * size.width() * 0.6, way.y() * ring * size.height());
                rect = QRectF(at - QPointF(size.width() / 2, size.height() / 2), size);
                if (std::ranges::none_of(
                        m_taken, [&](const QRectF& each) { return each.intersects(rect); })) {
                    put(role, text, rect);
                    return;
                }
                if (ring == 0)
                    break;
            }
        }
        put(role, text, rect);
    }

    void put(TextRole role, const QString& text, const QRectF& rect) {
        m_taken.push_back(rect);
        m_block.marks.emplace_back(TextMark{
            role, {rect.left() + m_fonts.points(1), rect.top() + m_fonts.ascent(role)}, text});
    }

    const PaperFloor& m_floor;
    const PaperFonts& m_fonts;
    QSizeF m_area;
    double m_top;
    double m_scale = 1; ///< dots for one inch of the house
    QString m_words;
    std::vector<QRectF> m_taken;
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
