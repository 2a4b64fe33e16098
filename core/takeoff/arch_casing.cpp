// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/arch_casing.h"

namespace miterbook {

ArchLeg archLegOf(const OpeningTrim& trim, Length standing, bool framed) {
    const Opening& opening = trim.opening;
    const Length height = opening.height + standing;
    ArchLeg leg;
    if (opening.rise > Length())
        leg = archLeg(height, opening.width, opening.rise, trim.reveal, trim.face);
    else
        leg = {{height + trim.reveal, height + trim.reveal + trim.face}, 45};
    if (framed) {
        leg.points.shortPoint += trim.reveal;
        leg.points.longPoint += trim.reveal + trim.face;
    }
    return leg;
}

void orderArch(const OpeningTrim& trim, Tally& tally) {
    const Opening& opening = trim.opening;
    if (opening.rise <= Length()) {
        tally.problem(trim.source, trim.source.name + " is an arch without a rise.");
        return;
    }
    tally.add(PartCount{trim.work, PartUse::archCasing, trim.faces, trim.source});
    const Arch jamb = segmentalArch(opening.width, opening.rise);
    tally.warn(trim.source,
        trim.source.name + ": order the arched casing made, inside radius "
            + tally.text(jamb.radius + trim.reveal) + ", outside "
            + tally.text(jamb.radius + trim.reveal + trim.face) + "; it is not cut from sticks.");
}

} // namespace miterbook
