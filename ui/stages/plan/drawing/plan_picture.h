// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "cut/opening_states.h"
#include "plan/leaves.h"
#include "stages/plan/drawing/drawn_level.h"

#include <QLineF>
#include <QPointF>
#include <QPolygonF>
#include <QString>

#include <optional>
#include <vector>

namespace miterbook {

/// A room as it is drawn, in inches.
struct PictureRoom {
    std::int64_t key = 0;
    RowMark mark = RowMark::plain;
    QPolygonF outline;
    QPointF middle; ///< inside it, for its name
    QString name;
    QString number;               ///< on the plan, where it has a name too
    bool before = false;          ///< where the base plan has it; the target has it elsewhere
    QString size;                 ///< width by depth of a rectangle, else its area
    std::vector<QString> lengths; ///< of its walls
    std::vector<bool> bare;       ///< walls without base
    struct Break {
        QPolygonF outline;
        QString name;
    };
    std::vector<Break> breaks;
};

/// An opening in its wall, in inches.
struct PictureOpening {
    std::int64_t key = 0;
    RowMark mark = RowMark::plain;
    bool window = true;
    Leaves leaves = Leaves::none;
    Hand hand = Hand::none;
    QPointF at;    ///< the middle, on the wall's face
    QPointF along; ///< one inch along the wall
    QPointF out;   ///< one inch out of the room
    double width = 0;
    double depth = 0;    ///< of the wall
    QString label;       ///< its mark
    bool before = false; ///< where the base plan has it; the target has it elsewhere
    QString size;
    std::optional<PieceState> state;
};

/// Counted or measured work, in inches.
struct PictureWork {
    std::int64_t key = 0;
    RowMark mark = RowMark::plain;
    MarkKind kind = MarkKind::count;
    QPolygonF marks;
    QString name;
    bool before = false; ///< as above
};

/// A stair as it is drawn, in inches.
struct PictureStair {
    std::int64_t key = 0; ///< 0: it comes up from below
    RowMark mark = RowMark::plain;
    std::vector<QPolygonF> parts; ///< flights and landings
    struct Riser {
        QLineF line;
        bool above = false; ///< of where the plan is cut
    };
    std::vector<Riser> risers;
    QPolygonF way; ///< from foot to head
    QPolygonF arrow;
    QString label;
    bool before = false; ///< as above
    QRectF bounds() const;
    bool comesUp() const { return key == 0 && mark == RowMark::plain; } ///< from below
};

/// What the elevation and options that are looked at do to the level against the base plan.
struct PictureDifferences {
    QStringList names; ///< "elevation B"
    int added = 0;
    int changed = 0;
    int removed = 0;
    int moved = 0;         ///< of those changed, also drawn where the base plan has them
    int undrawn = 0;       ///< of these, rows without a place on the drawing
    bool reversed = false; ///< built left for right; the drawing stays as it is

    bool operator==(const PictureDifferences&) const = default;
};

/// Rows that are drawn.
struct PictureRows {
    std::vector<PictureRoom> rooms;
    std::vector<PictureOpening> openings;
    std::vector<PictureWork> works;
    std::vector<PictureStair> stairs;
};

/// One level as it is drawn. Made anew after each change; painting only reads it.
struct PlanPicture : PictureRows {
    PictureRows apart; ///< seen, but not to be taken hold of: of what is looked at but not changed,
                       ///< and where the base plan has what the target has elsewhere
    PictureDifferences differences;
    int undrawnRooms = 0;
    int unplacedOpenings = 0;
    std::vector<PictureStair> fromBelow; ///< stairs of the level below, not to be taken hold of

    QRectF bounds() const;
};

/// With how far the openings of a house have come, and with what the variants in `seen` do besides
/// the target's own.
PlanPicture pictureOf(const DrawnLevel& level, const OpeningStates& states = {},
    const std::vector<Id<Variant>>& seen = {});

/// A wall's length as carpenters say it on a plan: feet and inches, or the shop's millimetres.
QString wallText(Length length, const Book& book);

} // namespace miterbook
