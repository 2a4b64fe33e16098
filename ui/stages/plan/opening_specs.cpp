// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/opening_specs.h"

#include "plan/plan_checks.h"
#include "stages/plan/row_names.h"

namespace miterbook {

namespace {

/// What stands before the number of a mark: "W" of W4, nothing of 104.
std::string prefixOf(const std::string& mark) {
    const auto last = mark.find_last_not_of("0123456789");
    return last == std::string::npos ? std::string() : mark.substr(0, last + 1);
}

/// The last of the base plan: marks of elevations are often made up from those of the plan.
const Opening* lastOf(const PlanRows& rows, bool window) {
    const Opening* last = nullptr;
    for (const auto& [id, row] : rows.of<Opening>()) {
        if (row.isWindow() == window && !row.removed && !row.variant
            && (!last || row.position >= last->position))
            last = &row;
    }
    return last;
}

/// The n-th mark after the highest with this prefix.
std::string markAfter(std::vector<std::string> marks, const std::string& prefix, int n) {
    for (int i = 0; i < n; ++i)
        marks.push_back(nextMark(marks, prefix));
    return nextMark(marks, prefix);
}

} // namespace

std::string newOpeningMark(const PlanRows& rows, bool window, int n) {
    std::vector<std::string> marks;
    for (const auto& [id, row] : rows.of<Opening>())
        marks.push_back(row.mark);
    const Opening* last = lastOf(rows, window);
    const bool marked = last && !last->mark.empty();
    return markAfter(std::move(marks), marked ? prefixOf(last->mark) : window ? "W" : "D", n);
}

std::string newRoomMark(const PlanRows& rows, int n) {
    std::vector<std::string> marks{"100"};
    for (const auto& [id, row] : rows.of<Room>())
        marks.push_back(row.mark);
    return markAfter(std::move(marks), {}, n);
}

void beginOpening(Opening& opening, const PlanRows& rows, bool window, int n) {
    opening.kind = window ? OpeningKind::window : OpeningKind::prehungDoor;
    opening.style = window ? TrimStyle::pictureFrame : TrimStyle::threeSided;
    opening.sidesCased = window ? 1 : 2;
    opening.lockset = window ? Lockset::none : Lockset::passage;
    if (const Opening* last = lastOf(rows, window)) {
        opening.kind = last->kind;
        opening.style = last->style;
        opening.sidesCased = last->sidesCased;
        opening.casing = last->casing;
        opening.stool = last->stool;
        opening.cap = last->cap;
        opening.wallThickness = last->wallThickness;
        opening.frameDepth = last->frameDepth;
        opening.lockset = last->lockset;
        opening.doorStop = last->doorStop;
        opening.level = last->level;
    }
    opening.mark = newOpeningMark(rows, window, n);
}

std::string openingTitle(const Opening& opening) {
    const std::string kind(word(opening.kind));
    return opening.mark.empty() ? kind : kind + " " + opening.mark;
}

Result<void> checkTyped(const Opening& opening, const PlanRows& rows) {
    if (auto fine = checkOpening(opening, Missing::allowed); !fine)
        return fine;
    if (auto fine = checkMark(opening, rows); !fine)
        return fine;
    return checkOpeningWall(opening, rows);
}

} // namespace miterbook
