// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/extensions.h"

#include "takeoff/casing.h"
#include "takeoff/geometry.h"
#include "takeoff/leg_check.h"

namespace miterbook {

namespace {

Piece extensionPiece(
    const OpeningTrim& trim, const OutlineSide& side, Length thickness, Length standing) {
    Piece piece = casingPiece(trim, {}, "extension, " + side.name, side.length);
    if (trim.opening.shape == Shape::polygon) {
        // The box is mitered at its corners through the thickness of the stock.
        const SidePoints points = sidePoints(
            side.length, side.nearCorner, side.farCorner, {}, thickness);
        piece.shortPoint = points.shortPoint;
        piece.longPoint = points.longPoint;
        piece.left = miteredEnd(side.nearCorner);
        piece.right = miteredEnd(side.farCorner);
    } else {
        piece.longPoint += side.leg ? standing : 2 * thickness;
        piece.shortPoint = piece.longPoint;
    }
    piece.count = trim.opening.count;
    return piece;
}

void checkWidth(const OpeningTrim& trim, Length depth, const Profile& jamb, Tally& tally) {
    if (depth > jamb.width)
        tally.warn(trim.source,
            trim.source.name + " needs an extension " + tally.text(depth) + " deep, wider than "
                + jamb.name + " (" + tally.text(jamb.width) + ").");
}

} // namespace

void takeExtension(const OpeningTrim& trim, const std::vector<OutlineSide>& outline, Tally& tally) {
    const Opening& opening = trim.opening;
    const Length depth = extensionDepth(opening.wallThickness, opening.frameDepth);
    if (depth <= Length() || trim.style == TrimStyle::drywallReturn || outline.empty()
        || opening.count <= 0)
        return;
    TaskCount task{trim.work, Task::jambExtension, Quantity::count(opening.count), trim.conditions,
        trim.source, tally.text(depth) + " deep"};
    tally.add(std::move(task));
    const Id<Profile> profile = tally.plan().plan.jamb;
    const Profile* jamb = tally.usable(profile, trim.source, "jamb extension");
    if (!jamb)
        return;
    checkWidth(trim, depth, *jamb, tally);
    const bool framed = trim.style == TrimStyle::pictureFrame;
    const bool arched = opening.shape == Shape::arch;
    if (arched)
        tally.warn(trim.source,
            trim.source.name
                + ": the arched head of its extension is made to order; only the straight sides "
                  "are cut.");
    const std::size_t sides = outline.size() - (framed ? 0 : 1);
    for (std::size_t i = 0; i < sides; ++i) {
        if (arched && i == 1)
            continue;
        Piece piece = extensionPiece(
            trim, outline[i], jamb->thickness, legStanding(opening, tally.practice()));
        piece.profile = profile;
        tally.add(std::move(piece));
    }
}

} // namespace miterbook
