// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/conditions.h"

namespace miterbook {

void addCeiling(Conditions& conditions, Length ceiling) {
    if (ceiling > Length::feet(12))
        conditions.add(Condition::overTwelveFootCeiling);
    else if (ceiling >= Length::feet(10))
        conditions.add(Condition::tenFootCeiling);
    else if (ceiling >= Length::feet(9))
        conditions.add(Condition::nineFootCeiling);
}

void dropCeiling(Conditions& conditions) {
    for (const Condition condition :
        {Condition::nineFootCeiling, Condition::tenFootCeiling, Condition::overTwelveFootCeiling})
        conditions.remove(condition);
}

Conditions placeConditions(const Tally& tally, const Source& source) {
    Conditions conditions;
    const Level* level = tally.level(source.level);
    const Room* room = tally.room(source.room);
    if (room && room->ceiling > Length())
        addCeiling(conditions, room->ceiling);
    else if (level)
        addCeiling(conditions, level->ceiling);
    if (level && level->upper)
        conditions.add(Condition::upperFloor);
    return conditions;
}

Conditions conditionsFor(const Tally& tally, const Source& source, const Profile* profile) {
    Conditions conditions = placeConditions(tally, source);
    if (profile && profile->finish == Finish::stain)
        conditions.add(Condition::stainGrade);
    if (profile && profile->hardwood)
        conditions.add(Condition::hardwood);
    return conditions;
}

} // namespace miterbook
