// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/sheets/dxf_lines.h"
#include "stages/plan/sheets/sheet_page.h"

#include <QPainter>

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

/// $INSUNITS of a DXF; zero for units that are none of a building's.
Length insertUnit(int code) {
    switch (code) {
    case 1:
        return Length::inches(1);
    case 2:
        return Length::feet(1);
    case 4:
        return Length::millimetres(1);
    case 5:
        return Length::millimetres(10);
    case 6:
        return Length::millimetres(1000);
    default:
        return {};
    }
}

class DxfPage final : public SheetPage {
public:
    explicit DxfPage(DxfLines lines)
        : m_lines(std::move(lines)) {
        QRectF box;
        for (const QLineF& line : m_lines.lines)
            box = box.united(boxOf(line));
        m_corner = QPointF(box.left(), box.bottom()); // y goes up in a DXF
        m_size = box.size().expandedTo({1e-6, 1e-6});
    }

    QSizeF size() const override { return m_size; }
    Length unitInHouse() const override { return insertUnit(m_lines.units); }

    QImage draw(
        const QRectF& units, QSize pixels, const std::function<bool()>& stop) const override {
        QImage image(pixels, QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::transparent);
        QPainter painter(&image);
        painter.setRenderHint(QPainter::Antialiasing);
        painter.setPen(QPen(Qt::black, 1));
        const double across = pixels.width() / units.width();
        const double down = pixels.height() / units.height();
        const QRectF view = QRectF(QPointF(), pixels).adjusted(-2, -2, 2, 2);
        std::size_t count = 0;
        for (const QLineF& line : m_lines.lines) {
            if (++count % 4096 == 0 && stop && stop())
                return {};
            const auto toImage = [&](QPointF at) {
                return QPointF((at.x() - m_corner.x() - units.left()) * across,
                    (m_corner.y() - at.y() - units.top()) * down);
            };
            const QLineF drawn(toImage(line.p1()), toImage(line.p2()));
            if (boxOf(drawn).intersects(view))
                painter.drawLine(drawn);
        }
        return image;
    }

private:
    static QRectF boxOf(const QLineF& line) {
        return QRectF(line.p1(), line.p2()).normalized().adjusted(-1e-9, -1e-9, 1e-9, 1e-9);
    }

    DxfLines m_lines;
    QPointF m_corner;
    QSizeF m_size;
};

} // namespace

Result<OpenedSheet> openDxf(const std::string& content) {
    auto lines = readDxfLines(content, mostLines);
    if (!lines)
        return lines.error();
    return OpenedSheet{std::make_shared<const DxfPage>(std::move(lines).value()), 1};
}

} // namespace miterbook
