// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/openings.h"

#include "takeoff/casing.h"
#include "takeoff/extensions.h"
#include "takeoff/opening_tasks.h"
#include "takeoff/stool.h"

namespace miterbook {

void takeOpening(const Opening& opening, Tally& tally) {
    const OpeningTrim trim = openingTrim(opening, tally);
    const std::vector<OutlineSide> outline = outlineOf(opening);
    LongSides longSides;
    if (outline.empty()) {
        tally.problem(trim.source, trim.source.name + " has no size; its trim is not counted.");
    } else {
        if (trim.cased() && tally.usable(trim.casing, trim.source, "casing"))
            longSides = takeCasing(trim, outline, tally);
        const bool needsStool = trim.style == TrimStyle::stoolAndApron && trim.faces > 0;
        if ((trim.stool || needsStool) && (trim.profile || !trim.cased()))
            takeStool(trim, sillWidth(opening), tally);
        takeExtension(trim, outline, tally);
    }
    takeOpeningTasks(trim, outline, longSides, tally);
    takeHardware(trim, tally);
}

} // namespace miterbook
