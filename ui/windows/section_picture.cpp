// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/section_picture.h"

#include "desk/text.h"
#include "widgets/spoken_role.h"

#include <QPainter>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace miterbook {

namespace {

/// Lays a drawing into a room: `bounds` in inches, y upwards, as large as it goes, centred.
QTransform fitted(const QRectF& bounds, const QRectF& room) {
    const double scale = std::min(room.width() / bounds.width(), room.height() / bounds.height());
    QTransform fit;
    fit.translate(room.center().x(), room.center().y());
    fit.scale(scale, -scale);
    fit.translate(-bounds.center().x(), -bounds.center().y());
    return fit;
}

/// A line with a short stroke at each end.
void drawMeasure(QPainter& painter, QPointF from, QPointF to) {
    constexpr double stroke = 4;
    const QLineF line(from, to);
    const QPointF across
        = line.length() > 0 ? QPointF(line.dy(), -line.dx()) / line.length() * stroke : QPointF();
    painter.drawLine(line);
    painter.drawLine(from - across, from + across);
    painter.drawLine(to - across, to + across);
}

} // namespace

SectionPicture::SectionPicture(QWidget* parent)
    : QWidget(parent) {
    speakAs(*this, QAccessible::Graphic);
    setAccessibleName(tr("Section of the profile"));
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Preferred);
}

void SectionPicture::show(const Profile* profile, LengthStyle style) {
    m_profile.reset();
    if (profile && profile->thickness > Length() && profile->width > Length())
        m_profile = *profile;
    if (m_profile) {
        m_thickness = text(formatLengthWithUnit(m_profile->thickness, style));
        m_width = text(formatLengthWithUnit(m_profile->width, style));
        setAccessibleDescription(tr("%1, %2 thick and %3 wide")
                                     .arg(text(word(m_profile->section)), m_thickness, m_width));
    } else {
        setAccessibleDescription({});
    }
    update();
}

QSize SectionPicture::sizeHint() const {
    return {fontMetrics().averageCharWidth() * 50, fontMetrics().height() * 9};
}

QSize SectionPicture::minimumSizeHint() const {
    return {fontMetrics().averageCharWidth() * 24, fontMetrics().height() * 5};
}

/// In inches; the thin edge of what stands on the wall is where the opening or the room is.
QPolygonF SectionPicture::outline() const {
    const double thickness = m_profile->thickness.toInches();
    const double width = m_profile->width.toInches();
    const auto points = springs()
        ? sprungOutline(m_profile->section, thickness, width, m_profile->springAngle.toDegrees())
        : sectionOutline(m_profile->section, thickness, width);
    QPolygonF polygon;
    for (const SectionPoint& point : points)
        polygon << QPointF(point.along, point.out);
    return polygon;
}

void SectionPicture::paintEvent(QPaintEvent*) {
    if (!m_profile)
        return;
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(palette().color(QPalette::WindowText), 1.5));
    painter.setBrush(palette().color(QPalette::Midlight));
    const double margin = fontMetrics().height() * 1.6;
    const double side = fontMetrics().horizontalAdvance(m_thickness) + margin;
    const QRectF room = QRectF(rect()).adjusted(margin, margin / 2, -side, -margin);
    if (room.width() < 10 || room.height() < 10)
        return;
    if (springs())
        paintSprung(painter, room);
    else
        paintFlat(painter, room);
}

void SectionPicture::paintFlat(QPainter& painter, const QRectF& room) const {
    const QPolygonF flat = outline();
    const QPolygonF drawn = fitted(flat.boundingRect(), room).map(flat);
    painter.drawPolygon(drawn);
    const QRectF box = drawn.boundingRect();
    painter.setPen(palette().color(QPalette::WindowText));
    const double gap = fontMetrics().height() * 0.4;
    drawMeasure(painter, box.bottomLeft() + QPointF(0, gap), box.bottomRight() + QPointF(0, gap));
    drawMeasure(painter, box.topRight() + QPointF(gap, 0), box.bottomRight() + QPointF(gap, 0));
    painter.drawText(QRectF(box.center().x() - room.width(), box.bottom() + gap + 2,
                         2 * room.width(), fontMetrics().height()),
        Qt::AlignCenter, m_width);
    painter.drawText(QRectF(box.right() + gap + 6, box.center().y() - fontMetrics().height() / 2.0,
                         width(), fontMetrics().height()),
        Qt::AlignLeft | Qt::AlignVCenter, m_thickness);
}

/// Wall at the left, ceiling above; the face's lower edge lies on the wall.
void SectionPicture::paintSprung(QPainter& painter, const QRectF& room) const {
    const double spring = m_profile->springAngle.toDegrees() * std::numbers::pi / 180;
    const double width = m_profile->width.toInches();
    const double drop = width * std::cos(spring);
    const double projection = width * std::sin(spring);
    QPolygonF placed;
    for (const QPointF& point : outline()) {
        const double depth = m_profile->thickness.toInches() - point.y(); // behind the face
        placed << QPointF(point.x() * std::sin(spring) - depth * std::cos(spring),
            point.x() * std::cos(spring) + depth * std::sin(spring) - drop);
    }
    const double beyond = width * 0.25;
    const QRectF bounds(0, -drop - beyond, projection + beyond, drop + beyond);
    const QTransform fit = fitted(bounds, room);
    painter.drawPolygon(fit.map(placed));
    painter.setPen(QPen(palette().color(QPalette::WindowText), 2.5));
    painter.drawLine(fit.map(QPointF(0, 0)), fit.map(QPointF(0, -drop - beyond)));
    painter.drawLine(fit.map(QPointF(0, 0)), fit.map(QPointF(projection + beyond, 0)));
    painter.setPen(palette().color(QPalette::WindowText));
    const QPointF words = fit.map(QPointF(projection + beyond, 0)) + QPointF(10, 0);
    const QStringList lines{tr("%1 across the face").arg(m_width), tr("%1 thick").arg(m_thickness),
        tr("springs %1\u00B0 from the wall").arg(m_profile->springAngle.toDegrees())};
    painter.drawText(QRectF(words, QSizeF(this->width() - words.x(), room.height())),
        Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap, lines.join(u'\n'));
}

} // namespace miterbook
