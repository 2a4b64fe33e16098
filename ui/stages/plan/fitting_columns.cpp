// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/fitting_columns.h"

#include "widgets/profile_column.h"

namespace miterbook {

namespace {

bool hasShelves(const Closet& closet) {
    return closet.kind == ClosetKind::shelves;
}

bool hasRod(const Closet& closet) {
    return closet.kind != ClosetKind::shelves;
}

bool hasRail(const Stair& stair) {
    return stair.rail != RailStyle::none;
}

constexpr Column<Closet> closets[] = {
    differenceColumn<Closet>(),
    textColumn<&Closet::name>(QT_TRANSLATE_NOOP("Column", "Closet")),
    roomColumn<&Closet::room>(QT_TRANSLATE_NOOP("Column", "Room")),
    wordColumn<&Closet::kind>(QT_TRANSLATE_NOOP("Column", "Kind")),
    lengthColumn<&Closet::width>(QT_TRANSLATE_NOOP("Column", "Width")),
    lengthColumn<&Closet::depth>(QT_TRANSLATE_NOOP("Column", "Shelf depth")),
    wholeColumn<&Closet::shelves, 1, 100>(QT_TRANSLATE_NOOP("Column", "Shelves")).when(hasShelves),
    wholeColumn<&Closet::count, 1, 500>(QT_TRANSLATE_NOOP("Column", "Count")).sum(),
    profileColumn<&Closet::shelf, NoProfile::unsaid, ProfileUse::shelf, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Shelf stock")),
    profileColumn<&Closet::rod, NoProfile::unsaid, ProfileUse::rod>(
        QT_TRANSLATE_NOOP("Column", "Rod"))
        .when(hasRod),
    profileColumn<&Closet::cleat, NoProfile::unsaid, ProfileUse::cleat, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Cleat")),
    levelColumn<&Closet::level>(QT_TRANSLATE_NOOP("Column", "Level")),
    textColumn<&Closet::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

constexpr Column<Stair> stairs[] = {
    differenceColumn<Stair>(),
    textColumn<&Stair::name>(QT_TRANSLATE_NOOP("Column", "Stair")),
    wholeColumn<&Stair::risers, 1, 100>(QT_TRANSLATE_NOOP("Column", "Risers")),
    wholeColumn<&Stair::closedSkirts, 0, 4>(QT_TRANSLATE_NOOP("Column", "Closed skirts")),
    wholeColumn<&Stair::openSkirts, 0, 4>(QT_TRANSLATE_NOOP("Column", "Open skirts")),
    lengthColumn<&Stair::skirtLength>(QT_TRANSLATE_NOOP("Column", "Skirt length")),
    profileColumn<&Stair::skirt, NoProfile::unsaid, ProfileUse::board, ProfileUse::base>(
        QT_TRANSLATE_NOOP("Column", "Skirt stock")),
    checkColumn<&Stair::treadsAndRisers>(QT_TRANSLATE_NOOP("Column", "Treads and risers")),
    wordColumn<&Stair::rail>(QT_TRANSLATE_NOOP("Column", "Rail")),
    lengthColumn<&Stair::railLength>(QT_TRANSLATE_NOOP("Column", "Rail length")).when(hasRail),
    profileColumn<&Stair::handrail, NoProfile::unsaid, ProfileUse::handrail>(
        QT_TRANSLATE_NOOP("Column", "Handrail"))
        .when(hasRail),
    wholeColumn<&Stair::newels, 0, 100, Zero::hidden>(QT_TRANSLATE_NOOP("Column", "Newels")),
    wholeColumn<&Stair::balusters, 0, 1000, Zero::hidden>(QT_TRANSLATE_NOOP("Column", "Balusters")),
    lengthColumn<&Stair::balusterRun>(QT_TRANSLATE_NOOP("Column", "Run between newels")),
    lengthColumn<&Stair::balusterWidth>(QT_TRANSLATE_NOOP("Column", "Baluster width")),
    lengthColumn<&Stair::flightWidth>(QT_TRANSLATE_NOOP("Column", "Flight width")),
    levelColumn<&Stair::level>(QT_TRANSLATE_NOOP("Column", "Level")),
    roomColumn<&Stair::room>(QT_TRANSLATE_NOOP("Column", "Room")),
    textColumn<&Stair::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

constexpr Column<WallTreatment> treatments[] = {
    differenceColumn<WallTreatment>(),
    textColumn<&WallTreatment::name>(QT_TRANSLATE_NOOP("Column", "Wall")),
    roomColumn<&WallTreatment::room>(QT_TRANSLATE_NOOP("Column", "Room")),
    wordColumn<&WallTreatment::kind>(QT_TRANSLATE_NOOP("Column", "Kind")),
    lengthColumn<&WallTreatment::width>(QT_TRANSLATE_NOOP("Column", "Width")),
    lengthColumn<&WallTreatment::height>(QT_TRANSLATE_NOOP("Column", "Height")),
    profileColumn<&WallTreatment::board, NoProfile::unsaid>(QT_TRANSLATE_NOOP("Column", "Board")),
    lengthColumn<&WallTreatment::spacing>(QT_TRANSLATE_NOOP("Column", "Face or spacing")),
    profileColumn<&WallTreatment::cap, NoProfile::unsaid>(QT_TRANSLATE_NOOP("Column", "Cap")),
    levelColumn<&WallTreatment::level>(QT_TRANSLATE_NOOP("Column", "Level")),
    textColumn<&WallTreatment::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

Unit unitOfOther(const OtherWork& work) {
    return unitOf(work.task);
}

constexpr Column<OtherWork> others[] = {
    differenceColumn<OtherWork>(),
    textColumn<&OtherWork::name>(QT_TRANSLATE_NOOP("Column", "Work")),
    taskColumn<&OtherWork::task>(QT_TRANSLATE_NOOP("Column", "Task")),
    amountColumn<&OtherWork::quantity, unitOfOther>(QT_TRANSLATE_NOOP("Column", "Quantity")),
    Column<OtherWork>{.title = QT_TRANSLATE_NOOP("Column", "Unit"),
        .read =
            [](const OtherWork& work, const Book& book) {
                return text(unitText(unitOf(work.task), book.prices.shop().unit));
            }},
    roomColumn<&OtherWork::room>(QT_TRANSLATE_NOOP("Column", "Room")),
    profileColumn<&OtherWork::profile, NoProfile::unsaid>(
        QT_TRANSLATE_NOOP("Column", "Profile used")),
    lengthColumn<&OtherWork::length>(QT_TRANSLATE_NOOP("Column", "Length of it")),
    moneyColumn<&OtherWork::material>(QT_TRANSLATE_NOOP("Column", "Bought outright")).sum(),
    levelColumn<&OtherWork::level>(QT_TRANSLATE_NOOP("Column", "Level")),
    textColumn<&OtherWork::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

} // namespace

std::span<const Column<Closet>> closetColumns() {
    return closets;
}

std::span<const Column<Stair>> stairColumns() {
    return stairs;
}

std::span<const Column<WallTreatment>> treatmentColumns() {
    return treatments;
}

std::span<const Column<OtherWork>> otherWorkColumns() {
    return others;
}

} // namespace miterbook
