// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/drawing/plan_differences.h"

#include "desk/text.h"
#include "stages/plan/drawing/picture_rows.h"

#include <algorithm>

namespace miterbook {

namespace {

template <class List>
auto* byKey(List& rows, std::int64_t key) {
    const auto it = std::ranges::find(rows, key, [](const auto& row) { return row.key; });
    return it == rows.end() ? nullptr : &*it;
}

bool standsElsewhere(const Room& a, const Room& b) {
    return a.outline != b.outline;
}

bool standsElsewhere(const Opening& a, const Opening& b) {
    return a.room != b.room || a.wall != b.wall || a.along != b.along || a.width != b.width;
}

bool standsElsewhere(const OtherWork& a, const OtherWork& b) {
    return a.marks != b.marks;
}

bool standsElsewhere(const Stair& a, const Stair& b) {
    return a.walkLine != b.walkLine || a.flightWidth != b.flightWidth;
}

class Differences {
public:
    Differences(PlanPicture& picture, const DrawnLevel& level)
        : m_picture(picture)
        , m_level(level)
        , m_sheet(level.sheet()) {}

    /// The target's own: its rows are in the picture with their marks.
    void takeTarget() {
        m_variant = m_level.target().variant;
        if (!takeVariant())
            return;
        count(m_level.rooms());
        count(m_level.openings());
        count(m_level.works());
        count(m_level.stairs());
        showBases(m_level.rooms());
        showBases(m_level.openings());
        showBases(m_level.works());
        showBases(m_level.stairs());
        countFittings();
    }

    /// One that is looked at besides.
    void takeSeen(Id<Variant> variant) {
        m_variant = variant;
        if (!takeVariant())
            return;
        takeRows<Room>(m_picture.rooms);
        takeRows<Opening>(m_picture.openings);
        takeRows<OtherWork>(m_picture.works);
        takeRows<Stair>(m_picture.stairs);
        countFittings();
    }

private:
    bool takeVariant() {
        const Variant* variant = m_sheet.of<Variant>().find(m_variant);
        if (!variant)
            return false;
        m_picture.differences.names.append(
            text(word(variant->kind)) + QChar(u' ') + text(variant->name));
        m_picture.differences.reversed ^= variant->reversed;
        return true;
    }

    void countOne(RowMark mark, bool drawn) {
        PictureDifferences& all = m_picture.differences;
        all.added += mark == RowMark::added ? 1 : 0;
        all.changed += mark == RowMark::changed ? 1 : 0;
        all.removed += mark == RowMark::removed ? 1 : 0;
        all.undrawn += mark != RowMark::plain && !drawn ? 1 : 0;
    }

    template <class Row>
    void count(const std::vector<Row>& rows) {
        for (const Row& row : rows)
            countOne(markOfRow(row), isInPicture(row));
    }

    bool isInPicture(const Room& row) const { return byKey(m_picture.rooms, rowKey(row)); }
    bool isInPicture(const Opening& row) const { return byKey(m_picture.openings, rowKey(row)); }
    bool isInPicture(const OtherWork& row) const { return byKey(m_picture.works, rowKey(row)); }
    bool isInPicture(const Stair& row) const { return byKey(m_picture.stairs, rowKey(row)); }

    /// Where the base plan has what the target has elsewhere.
    template <class Row>
    void showBases(const std::vector<Row>& rows) {
        for (const Row& row : rows) {
            const Row* base = row.replaces ? m_sheet.of<Row>().find(row.replaces) : nullptr;
            if (base && !row.removed && standsElsewhere(row, *base)
                && draw(*base, RowMark::removed)) {
                lastOf(*base).before = true;
                ++m_picture.differences.moved;
            }
        }
    }

    template <class Row, class Drawn>
    void takeRows(std::vector<Drawn>& drawn) {
        for (const auto& [id, row] : m_sheet.of<Row>()) {
            if (row.variant != m_variant)
                continue;
            const Row* base = row.replaces ? m_sheet.of<Row>().find(row.replaces) : nullptr;
            if (!isHere(row.removed && base ? *base : row))
                continue;
            const RowMark mark = markOfRow(row);
            Drawn* there = base ? byKey(drawn, rowKey(row)) : nullptr;
            if (there && there->mark == RowMark::plain)
                there->mark = mark;
            bool shown = there != nullptr;
            if (!row.removed && (!base || standsElsewhere(row, *base)))
                shown = draw(row, mark) || shown;
            countOne(mark, shown);
        }
    }

    template <class Row>
    bool isHere(const Row& row) const {
        if constexpr (requires { row.room; }) {
            if (!row.level) {
                const Room* room = roomFor(row.room);
                return room && room->level == m_level.level();
            }
        }
        return row.level == m_level.level();
    }

    /// The room as the variant has it: its own row, else the one on the drawing.
    const Room* roomFor(Id<Room> id) const {
        for (const auto& [key, room] : m_sheet.of<Room>()) {
            if (room.variant == m_variant && room.replaces == id && !room.removed)
                return &room;
        }
        if (const Room* drawn = m_level.room(id.value()))
            return drawn;
        return m_sheet.of<Room>().find(id);
    }

    bool draw(const Room& row, RowMark mark) {
        if (row.outline.empty())
            return false;
        m_picture.apart.rooms.push_back(pictureOfRoom(row, m_level.book()));
        setApart(m_picture.apart.rooms.back(), mark);
        return true;
    }

    bool draw(const Opening& row, RowMark mark) {
        const Room* room = roomFor(row.room);
        const auto place = room && !room->outline.empty() ? placeIn(*room, row) : std::nullopt;
        if (!place)
            return false;
        m_picture.apart.openings.push_back(
            pictureOfOpening(row, *room, *place, m_level.book()));
        setApart(m_picture.apart.openings.back(), mark);
        return true;
    }

    bool draw(const OtherWork& row, RowMark mark) {
        return drawApart(pictureOfWork(row), m_picture.apart.works, mark);
    }

    bool draw(const Stair& row, RowMark mark) {
        return drawApart(pictureOfStair(row), m_picture.apart.stairs, mark);
    }

    template <class Drawn>
    static bool drawApart(std::optional<Drawn> drawn, std::vector<Drawn>& list, RowMark mark) {
        if (!drawn)
            return false;
        setApart(*drawn, mark);
        list.push_back(std::move(*drawn));
        return true;
    }

    PictureRoom& lastOf(const Room&) { return m_picture.apart.rooms.back(); }
    PictureOpening& lastOf(const Opening&) { return m_picture.apart.openings.back(); }
    PictureWork& lastOf(const OtherWork&) { return m_picture.apart.works.back(); }
    PictureStair& lastOf(const Stair&) { return m_picture.apart.stairs.back(); }

    /// Without its key it is not shown as chosen when the row of that key is.
    template <class Drawn>
    static void setApart(Drawn& drawn, RowMark mark) {
        drawn.key = 0;
        drawn.mark = mark;
    }

    /// What never has a place on the drawing.
    void countFittings() {
        countUndrawn<Closet>();
        countUndrawn<WallTreatment>();
    }

    template <class Row>
    void countUndrawn() {
        for (const Row& row : shownRows(m_sheet.of<Row>(), m_variant)) {
            if (row.variant && row.level == m_level.level())
                countOne(markOfRow(row), false);
        }
    }

    PlanPicture& m_picture;
    const DrawnLevel& m_level;
    const PlanRows& m_sheet;
    Id<Variant> m_variant;
};

} // namespace

void addDifferences(
    PlanPicture& picture, const DrawnLevel& level, const std::vector<Id<Variant>>& seen) {
    Differences differences(picture, level);
    const Id<Variant> own = level.target().variant;
    differences.takeTarget();
    for (const Id<Variant> each : seen) {
        if (each != own)
            differences.takeSeen(each);
    }
}

} // namespace miterbook
