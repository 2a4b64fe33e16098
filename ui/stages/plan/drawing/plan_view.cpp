// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/plan_view.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "plan/redraw.h"
#include "widgets/spoken_role.h"

#include <QPainter>
#include <QResizeEvent>

namespace miterbook {

PlanView::PlanView(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_level(std::make_unique<DrawnLevel>(desk.book(), EditTarget(), Id<Level>())) {
    speakAs(*this, QAccessible::Canvas);
    setFocusPolicy(Qt::StrongFocus);
    setMouseTracking(true);
    setMinimumSize(240, 200);
    setAccessibleName(tr("Drawing of the level"));
    setAccessibleDescription(tr("Rooms and openings to draw and move; period and comma go from one "
                                "to the next, arrow keys move what is chosen."));
    connect(&desk, &Desk::changed, this, &PlanView::refresh);
}

PlanView::~PlanView() = default;

void PlanView::setLevel(const EditTarget& target, Id<Level> level) {
    const bool other = m_level->target().plan != target.plan || m_level->level() != level;
    m_level = std::make_unique<DrawnLevel>(m_desk.book(), target, level);
    if (other) {
        m_look.selected.clear();
        m_points.clear();
        m_fitted = false;
    }
    refresh();
}

void PlanView::refresh() {
    m_level = std::make_unique<DrawnLevel>(m_desk.book(), m_level->target(), m_level->level());
    m_picture = pictureOf(*m_level, m_states, m_seen);
    const auto gone = [&](const DrawnItem& item) {
        return item.kind == DrawnItem::Kind::room   ? !m_level->room(item.key)
            : item.kind == DrawnItem::Kind::opening ? !m_level->opening(item.key)
            : item.kind == DrawnItem::Kind::stair   ? !m_level->stair(item.key)
                                                    : !m_level->work(item.key);
    };
    if (std::erase_if(m_look.selected, gone) > 0)
        Q_EMIT selectionChanged();
    if (!m_fitted)
        fitAll();
    update();
}

void PlanView::setStates(OpeningStates states) {
    if (states == m_states)
        return;
    m_states = std::move(states);
    refresh();
}

void PlanView::setSeen(std::vector<Id<Variant>> seen) {
    if (seen == m_seen)
        return;
    m_seen = std::move(seen);
    refresh();
}

void PlanView::setUnderlayer(Underlayer underlayer) {
    m_underlayer = std::move(underlayer);
    m_look.overSheet = static_cast<bool>(m_underlayer);
    update();
}

void PlanView::setOverlayer(Underlayer overlayer) {
    m_overlayer = std::move(overlayer);
    update();
}

void PlanView::setSheetBounds(const QRectF& bounds) {
    const bool first = m_sheetBounds.isEmpty() && !bounds.isEmpty();
    m_sheetBounds = bounds;
    if (first && m_picture.rooms.empty())
        fitAll();
}

bool PlanView::perform(const Result<Edit>& edit) {
    if (edit)
        return m_desk.perform(*edit);
    m_desk.refuse(edit.error());
    return false;
}

void PlanView::setTool(PlanTool tool) {
    m_tool = tool;
    m_points.clear();
    m_drag = Drag::none;
    setCursor(tool == PlanTool::choose ? Qt::ArrowCursor : Qt::CrossCursor);
    Q_EMIT toolChanged();
    sayHint();
    update();
}

void PlanView::setShowLengths(bool show) {
    m_look.lengths = show;
    update();
}

void PlanView::select(std::set<DrawnItem> items) {
    if (items == m_look.selected)
        return;
    m_look.selected = std::move(items);
    m_look.wall = -1;
    update();
    Q_EMIT selectionChanged();
    sayHint();
}

void PlanView::show(const DrawnItem& item) {
    select({item});
    QPointF at;
    bool found = false;
    const auto take = [&](const auto& list, auto place) {
        for (const auto& each : list) {
            if (each.key == item.key) {
                at = place(each);
                found = true;
            }
        }
    };
    if (item.kind == DrawnItem::Kind::room)
        take(m_picture.rooms, [](const PictureRoom& room) { return room.middle; });
    else if (item.kind == DrawnItem::Kind::opening)
        take(m_picture.openings, [](const PictureOpening& opening) { return opening.at; });
    else if (item.kind == DrawnItem::Kind::stair)
        take(m_picture.stairs, [](const PictureStair& stair) { return stair.bounds().center(); });
    else
        take(m_picture.works, [](const PictureWork& work) { return work.marks.front(); });
    const QRectF inner = QRectF(rect()).adjusted(30, 30, -30, -30);
    if (found && !inner.contains(m_frame.toScreen(at)))
        m_frame.pan(inner.center() - m_frame.toScreen(at));
    update();
}

void PlanView::fitAll() {
    const QRectF drawn = m_picture.bounds();
    const QRectF bounds = drawn.isEmpty() ? m_sheetBounds : drawn;
    if (!bounds.isEmpty()) {
        m_frame.fit(bounds.adjusted(-24, -24, 24, 24), size());
        m_fitted = true;
    }
    update();
}

void PlanView::zoom(double factor) {
    m_frame.zoom(factor, QRectF(rect()).center());
    m_fitted = true;
    update();
}

void PlanView::clearPoints() {
    m_points.clear();
    update();
}

Length PlanView::step() const {
    for (const int inches : {1, 3, 6, 12}) {
        if (inches * m_frame.scale() >= 5)
            return Length::inches(inches);
    }
    return Length::inches(24);
}

SnapTo PlanView::snapTo(const std::vector<std::int64_t>& but) const {
    return {m_level->outlines(but), m_points, m_wall, m_frame.length(9), step()};
}

PlanPoint PlanView::snappedAt(QPointF at) const {
    return snapped(m_frame.toPlan(at), snapTo()).point;
}

std::vector<DrawnItem> PlanView::chosenItems() const {
    return {m_look.selected.begin(), m_look.selected.end()};
}

std::vector<std::int64_t> PlanView::chosenKeys(DrawnItem::Kind kind) const {
    std::vector<std::int64_t> keys;
    for (const DrawnItem& item : m_look.selected) {
        if (item.kind == kind)
            keys.push_back(item.key);
    }
    return keys;
}

std::optional<std::int64_t> PlanView::onlyOne(DrawnItem::Kind kind) const {
    if (m_look.selected.size() != 1 || m_look.selected.begin()->kind != kind)
        return std::nullopt;
    return m_look.selected.begin()->key;
}

void PlanView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), palette().color(QPalette::Base));
    if (m_underlayer)
        m_underlayer(painter, m_frame);
    if (!m_fonts || !m_fonts->areOf(font()))
        m_fonts = std::make_unique<LabelFonts>(font(), this);
    PicturePainter(painter, m_frame, palette(), rect(), m_look, *m_fonts).paint(m_picture);
    if (!m_underlayer && m_picture.rooms.empty() && m_picture.works.empty())
        paintHint(painter);
    if (m_overlayer)
        m_overlayer(painter, m_frame);
    paintShape(painter);
    if (hasFocus()) {
        painter.setPen(QPen(palette().color(QPalette::Highlight), 1));
        painter.setBrush(Qt::NoBrush);
        painter.drawRect(QRectF(rect()).adjusted(0.5, 0.5, -0.5, -0.5));
    }
}

/// What to do first on a level on which nothing is drawn.
void PlanView::paintHint(QPainter& painter) const {
    painter.setPen(palette().color(QPalette::PlaceholderText));
    painter.drawText(QRectF(rect()).adjusted(12, 8, -12, -8), Qt::AlignTop | Qt::TextWordWrap,
        tr("Nothing is drawn on this level yet. Choose Room and pull a rectangle, or lay the "
           "builder's sheet under it with More. What is typed into the tables counts all the "
           "same."));
}

/// What is being drawn or dragged, over everything.
void PlanView::paintShape(QPainter& painter) const {
    painter.setRenderHint(QPainter::Antialiasing);
    QPen pen(palette().color(QPalette::Highlight), 2, Qt::DashLine);
    painter.setPen(pen);
    painter.setBrush(Qt::NoBrush);
    if (m_drag == Drag::band)
        painter.drawRect(QRectF(m_pressed, m_last).normalized());
    if (!m_dragOutline.empty()) {
        QPolygonF outline;
        for (const PlanPoint& corner : m_dragOutline)
            outline.append(m_frame.toScreen(corner));
        painter.drawPolygon(outline);
    }
    if (m_tool == PlanTool::choose)
        return;
    const QPointF cursor = m_frame.toScreen(m_cursor);
    if (m_tool == PlanTool::rectangle && !m_points.empty()) {
        painter.drawRect(QRectF(m_frame.toScreen(m_points.front()), cursor).normalized());
    } else if (!m_points.empty()) {
        QPolygonF line;
        for (const PlanPoint& point : m_points)
            line.append(m_frame.toScreen(point));
        line.append(cursor);
        painter.drawPolyline(line);
    }
    pen.setStyle(Qt::SolidLine);
    pen.setWidthF(1);
    painter.setPen(pen);
    painter.drawLine(cursor - QPointF(9, 0), cursor + QPointF(9, 0));
    painter.drawLine(cursor - QPointF(0, 9), cursor + QPointF(0, 9));
}

void PlanView::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    if (!event->oldSize().isValid() || event->oldSize().width() < 2)
        fitAll();
}

} // namespace miterbook
