// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/forgotten_openings.h"

#include <algorithm>
#include <unordered_set>

namespace miterbook {

namespace {

/// A finished wall from here up is framed deeper than 2x4 (5 1/2 + two boards is 6 1/2).
constexpr Length deepWall = Length::inches(6);
/// Doors from here up are called 8 ft doors.
constexpr Length tallDoor = Length::inches(90);

/// Looks at one opening.
class OpeningLook {
public:
    OpeningLook(const Opening& opening, Tally& tally)
        : m_opening(opening)
        , m_tally(tally)
        , m_source(tally.sourceOf(opening)) {}

    void look() {
        lookAtPlace();
        lookAtDepth();
        if (m_opening.isDoor())
            lookAtHardware();
        if (!m_opening.isWindow()) {
            lookAtSides();
            lookAtHeight();
        }
    }

private:
    void say(const std::string& sentence) { m_tally.warn(m_source, m_source.name + sentence); }

    void lookAtPlace() {
        if (!m_opening.room)
            say(" stands in no room.");
        const Room* room = m_tally.room(m_opening.room);
        if (room && m_opening.wall > std::ssize(room->walls) && !room->walls.empty())
            say(" stands in wall " + std::to_string(m_opening.wall) + " of "
                + m_tally.sourceOf(*room).name + ", which has only "
                + std::to_string(room->walls.size()) + ".");
    }

    void lookAtDepth() {
        const bool trimmed = m_opening.style != TrimStyle::drywallReturn
            && m_opening.sidesCased > 0;
        if (trimmed && m_opening.wallThickness >= deepWall && m_opening.frameDepth <= Length())
            say(" stands in a wall of " + m_tally.text(m_opening.wallThickness)
                + " and has no jamb extension: its frame depth is not said.");
    }

    /// Exterior doors are cased inside; closet doors without swing often on one side only.
    void lookAtSides() {
        const OpeningKind kind = m_opening.kind;
        const bool oneIsUsual = kind == OpeningKind::exteriorDoor || kind == OpeningKind::bifoldDoor
            || kind == OpeningKind::bypassDoor || m_opening.style == TrimStyle::drywallReturn;
        if (m_opening.sidesCased == 0 && m_opening.style != TrimStyle::drywallReturn)
            say(" is cased on no side.");
        else if (m_opening.sidesCased == 1 && !oneIsUsual)
            say(" is cased on one side only.");
        if (m_opening.sidesCased == 2 && m_opening.room && !m_opening.otherRoom)
            say(" is cased on both sides, but the room on its other side is not said; base there is"
                " not shortened.");
    }

    void lookAtHeight() {
        const Length leg = m_tally.practice().longestLeg;
        if (m_opening.sidesCased > 0 && m_opening.height >= tallDoor && m_opening.height > leg)
            say(" is " + m_tally.text(m_opening.height) + " high: " + m_tally.stick(leg)
                + " legs will not do.");
    }

    void lookAtHardware() {
        const bool outside = m_opening.kind == OpeningKind::exteriorDoor;
        const bool latched = m_opening.kind == OpeningKind::prehungDoor
            || m_opening.kind == OpeningKind::pocketDoor
            || m_opening.kind == OpeningKind::doubleDoor;
        if (latched && m_opening.lockset == Lockset::none)
            say(" has no lockset.");
        else if (latched && m_opening.lockset != Lockset::privacy && isOfBath())
            say(" is a bath door without a privacy set.");
        if (outside && m_opening.lockset != Lockset::keyed && !m_opening.deadbolt)
            say(" is an exterior door with neither keyed set nor deadbolt.");
    }

    bool isOfBath() const {
        const auto isBath = [&](Id<Room> id) {
            const Room* room = m_tally.room(id);
            return room && room->use == RoomUse::bath;
        };
        // A closet or linen door inside a bath needs no privacy.
        const auto isStore = [&](Id<Room> id) {
            const Room* room = m_tally.room(id);
            return room && (room->use == RoomUse::closet || room->use == RoomUse::pantry);
        };
        return (isBath(m_opening.room) && !isStore(m_opening.otherRoom))
            || (isBath(m_opening.otherRoom) && !isStore(m_opening.room));
    }

    const Opening& m_opening;
    Tally& m_tally;
    Source m_source;
};

} // namespace

void lookAtOpening(const Opening& opening, Tally& tally) {
    if (opening.count > 0)
        OpeningLook(opening, tally).look();
}

void lookAtMarks(Tally& tally) {
    std::unordered_map<Id<Level>, std::unordered_set<std::string_view>> seen;
    for (const Opening& opening : tally.plan().openings) {
        const Source source = tally.sourceOf(opening);
        if (!opening.mark.empty() && !seen[source.level].insert(opening.mark).second)
            tally.warn(source, opening.mark + " is marked twice on the same level.");
    }
}

} // namespace miterbook
