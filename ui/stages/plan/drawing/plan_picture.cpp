// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/plan_picture.h"

#include "desk/text.h"
#include "plan/room_text.h"
#include "stages/plan/drawing/opening_gestures.h"
#include "stages/plan/drawing/picture_rows.h"
#include "stages/plan/drawing/plan_differences.h"

namespace miterbook {

namespace {

class PictureMaker {
public:
    PictureMaker(const DrawnLevel& level, const OpeningStates& states)
        : m_level(level)
        , m_states(states) {}

    PlanPicture make() {
        for (const Room& room : m_level.rooms())
            addRoom(room);
        for (const Opening& opening : m_level.openings())
            addOpening(opening);
        for (const OtherWork& work : m_level.works()) {
            if (auto drawn = pictureOfWork(work))
                m_picture.works.push_back(std::move(*drawn));
        }
        for (const Stair& stair : m_level.stairs()) {
            if (auto drawn = pictureOfStair(stair))
                m_picture.stairs.push_back(std::move(*drawn));
        }
        for (const Stair& stair : m_level.stairsFromBelow())
            addFromBelow(stair);
        return std::move(m_picture);
    }

private:
    void addRoom(const Room& room) {
        if (room.outline.empty())
            m_picture.undrawnRooms += room.removed ? 0 : 1;
        else
            m_picture.rooms.push_back(pictureOfRoom(room, m_level.book()));
    }

    void addOpening(const Opening& opening) {
        const auto where = placeOf(m_level, opening);
        if (!where) {
            m_picture.unplacedOpenings += opening.removed ? 0 : 1;
            return;
        }
        PictureOpening drawn = pictureOfOpening(
            opening, *where->room, where->place, m_level.book());
        const auto state = m_states.find(opening.id.value());
        if (state != m_states.end())
            drawn.state = state->second.state;
        m_picture.openings.push_back(std::move(drawn));
    }

    void addFromBelow(const Stair& stair) {
        auto drawn = pictureOfStair(stair);
        if (!drawn)
            return;
        drawn->key = 0;
        drawn->label = QObject::tr("DN");
        m_picture.fromBelow.push_back(std::move(*drawn));
    }

    const DrawnLevel& m_level;
    const OpeningStates& m_states;
    PlanPicture m_picture;
};

} // namespace

QRectF PictureStair::bounds() const {
    QRectF box;
    for (const QPolygonF& part : parts)
        box = box.united(part.boundingRect());
    return box;
}

QRectF PlanPicture::bounds() const {
    QRectF box;
    for (const PictureRows* rows : {static_cast<const PictureRows*>(this), &apart}) {
        for (const PictureRoom& room : rows->rooms)
            box = box.united(room.outline.boundingRect());
    }
    for (const PictureWork& work : works)
        box = box.united(work.marks.boundingRect().adjusted(-12, -12, 12, 12));
    for (const PictureStair& stair : stairs)
        box = box.united(stair.bounds());
    return box;
}

PlanPicture pictureOf(
    const DrawnLevel& level, const OpeningStates& states, const std::vector<Id<Variant>>& seen) {
    PlanPicture picture = PictureMaker(level, states).make();
    addDifferences(picture, level, seen);
    return picture;
}

QString wallText(Length length, const Book& book) {
    LengthStyle style = book.prices.shop().lengths();
    if (style.unit == LengthUnit::inches)
        style.unit = LengthUnit::feetInches;
    return text(formatLengthWithUnit(length, style));
}

} // namespace miterbook
