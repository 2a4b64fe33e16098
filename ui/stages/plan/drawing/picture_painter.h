// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/drawing/label_font.h"
#include "stages/plan/drawing/label_places.h"
#include "stages/plan/drawing/plan_picture.h"
#include "stages/plan/drawing/room_name.h"
#include "stages/plan/drawing/view_frame.h"

#include <QPainter>
#include <QPalette>

#include <set>

namespace miterbook {

/// What of the drawing is chosen, and what else is shown of it.
struct PictureLook {
    std::set<DrawnItem> selected;
    int wall = -1;          ///< of the one selected room
    bool lengths = false;   ///< of all walls, not only of selected rooms
    bool overSheet = false; ///< rooms are not filled: a sheet lies below
    bool handles = true;    ///< corners and walls to take hold of
};

/// Draws a level: rooms, walls, what stands against them, openings, marks and labels. Colours come
/// from the palette; nothing is said by colour alone.
class PicturePainter {
public:
    /// `fonts` are kept by who paints frame after frame.
    PicturePainter(QPainter& painter, const ViewFrame& frame, const QPalette& palette,
        const QRectF& view, const PictureLook& look, LabelFonts& fonts);

    void paint(const PlanPicture& picture);

private:
    void fillRoom(const PictureRoom& room);
    void drawBreaks(const PictureRoom& room);
    void drawWalls(const PictureRoom& room);
    void drawHandles(const PictureRoom& room);
    void drawOpening(const PictureOpening& opening);
    void drawWindow(const PictureOpening& opening, QPointF half, QPointF out);
    void drawLeaves(const PictureOpening& opening, QPointF half, QPointF out);
    void drawState(const PictureOpening& opening, QPointF at);
    void drawWork(const PictureWork& work);
    void drawStair(const PictureStair& stair);
    void drawApart(const PictureRows& rows);
    void strike(QPointF at, QPointF half, QPointF out);
    void drawLegend(const PictureDifferences& differences);

    void labelOpening(const PictureOpening& opening);
    void labelRoom(const PictureRoom& room);
    void labelWalls(const PictureRoom& room);
    bool writeName(const PictureRoom& room, const FittedName& fitted, const QRectF& inside);
    void labelWork(const PictureWork& work, const std::vector<PictureRoom>& rooms);
    void labelStair(const PictureStair& stair);
    /// At the first of the centres where it lies over no other label and inside of `within`.
    std::optional<QRectF> write(const QString& text, const std::vector<QPointF>& centres,
        const LabelFont& font, const QColor& ink, const QRectF& within = {});
    void label(const PictureRows& rows);

    bool isSeen(const QRectF& inches) const;
    bool isSelected(DrawnItem::Kind kind, std::int64_t key) const {
        return m_look.selected.contains({kind, key});
    }
    QPen penOf(RowMark mark, bool selected, double width) const;
    QPolygonF onScreen(const QPolygonF& inches) const;

    QPainter& m_painter;
    const ViewFrame& m_frame;
    const QPalette& m_palette;
    QRectF m_view;
    const PictureLook& m_look;
    LabelPlaces m_places;
    std::vector<QRectF> m_lined; ///< where stairs are: words over them need a rim
    LabelFonts& m_fonts;
    QColor m_ink;
    QColor m_quiet;
    QColor m_paper;
    QColor m_chosen;
    QColor m_accent;
};

} // namespace miterbook
