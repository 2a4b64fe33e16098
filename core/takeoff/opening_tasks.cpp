// SPDX-License-Identifier: GPL-3.0-or-later
#include "takeoff/opening_tasks.h"

#include "takeoff/conditions.h"

#include <algorithm>
#include <optional>

namespace miterbook {

namespace {

Task doorTask(OpeningKind kind) {
    switch (kind) {
    case OpeningKind::doubleDoor:
        return Task::doubleDoor;
    case OpeningKind::bifoldDoor:
    case OpeningKind::bypassDoor:
        return Task::bifoldOrBypassDoor;
    case OpeningKind::pocketDoor:
        return Task::pocketDoor;
    case OpeningKind::exteriorDoor:
        return Task::exteriorDoor;
    case OpeningKind::casedOpening:
        return Task::casedOpening;
    default:
        return Task::prehungDoor;
    }
}

std::optional<Task> windowTask(const OpeningTrim& trim) {
    if (trim.faces == 0)
        return std::nullopt;
    switch (trim.style) {
    case TrimStyle::pictureFrame:
        return Task::pictureFrameWindow;
    case TrimStyle::stoolAndApron:
        return Task::stoolAndApronWindow;
    case TrimStyle::threeSided:
        return Task::threeSidedWindow;
    case TrimStyle::buttedHead:
        return Task::buttedHeadWindow;
    case TrimStyle::drywallReturn:
        break;
    }
    return trim.stool ? std::optional(Task::drywallReturnStool) : std::nullopt;
}

std::string casedSides(const OpeningTrim& trim) {
    if (!trim.cased())
        return "not cased";
    return trim.opening.sidesCased >= 2 ? "cased both sides" : "cased one side";
}

TaskCount taskOf(const OpeningTrim& trim, Task task, int count, std::string what) {
    return {trim.work, task, Quantity::count(count), trim.conditions, trim.source, std::move(what)};
}

/// A door is set once whatever its sides; a window is trimmed once for each face.
void takeMainTask(const OpeningTrim& trim, Tally& tally) {
    if (!trim.opening.isWindow()) {
        tally.add(taskOf(trim, doorTask(trim.opening.kind), trim.opening.count, casedSides(trim)));
    } else if (const std::optional<Task> task = windowTask(trim)) {
        tally.add(taskOf(trim, *task, trim.faces, {}));
    }
}

/// Mitered corners other than 90 degrees. Where legs stand on a sill its two corners are not
/// mitered.
int nonSquareCorners(const OpeningTrim& trim, const std::vector<OutlineSide>& outline) {
    const auto notSquare = [](const OutlineSide& side) { return side.farCorner != 90.0; };
    const std::ptrdiff_t resting = trim.style == TrimStyle::pictureFrame ? 0 : 2;
    const auto last = outline.end() - std::min<std::ptrdiff_t>(resting, std::ssize(outline));
    return static_cast<int>(std::count_if(outline.begin(), last, notSquare));
}

PartUse setFor(Lockset lockset) {
    switch (lockset) {
    case Lockset::privacy:
        return PartUse::privacySet;
    case Lockset::dummy:
        return PartUse::dummySet;
    case Lockset::keyed:
        return PartUse::keyedSet;
    case Lockset::none:
    case Lockset::passage:
        break;
    }
    return PartUse::passageSet;
}

void takeFitting(const OpeningTrim& trim, Task task, PartUse use, Tally& tally) {
    TaskCount fitting = taskOf(trim, task, trim.opening.count, {});
    fitting.work = PieceOfWork::hardware;
    fitting.conditions = {};
    if (trim.conditions.has(Condition::upperFloor))
        fitting.conditions.add(Condition::upperFloor);
    tally.add(std::move(fitting));
    tally.add(PartCount{PieceOfWork::hardware, use, trim.opening.count, trim.source});
}

} // namespace

void takeOpeningTasks(const OpeningTrim& trim, const std::vector<OutlineSide>& outline,
    const LongSides& longSides, Tally& tally) {
    if (trim.opening.count <= 0)
        return;
    takeMainTask(trim, tally);
    if (longSides.count > 0)
        tally.add(taskOf(trim, Task::longSide, longSides.count,
            std::to_string(longSides.count) + (longSides.count == 1 ? " side of " : " sides up to ")
                + tally.text(longSides.longest)));
    if (!trim.cased())
        return;
    if (const int corners = nonSquareCorners(trim, outline) * trim.faces; corners > 0)
        tally.add(taskOf(trim, Task::nonSquareCorner, corners, {}));
    if (trim.opening.mulls > 0)
        tally.add(taskOf(trim, Task::mullCasing, trim.opening.mulls * trim.faces, {}));
}

void takeHardware(const OpeningTrim& trim, Tally& tally) {
    const Opening& opening = trim.opening;
    if (!opening.isDoor() || opening.count <= 0)
        return;
    if (opening.lockset != Lockset::none)
        takeFitting(trim, Task::lockset, setFor(opening.lockset), tally);
    if (opening.deadbolt)
        takeFitting(trim, Task::deadbolt, PartUse::deadbolt, tally);
    if (opening.doorStop)
        takeFitting(trim, Task::doorStop, PartUse::doorStop, tally);
}

} // namespace miterbook
