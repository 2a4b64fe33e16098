// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/hung_share.h"

#include "cut/progress.h"

namespace miterbook {

namespace {

struct UnitCount {
    std::int64_t all = 0;
    std::int64_t hung = 0;
};

void addShare(std::vector<DoneSaid>& shares, PieceOfWork work, const UnitCount& count) {
    if (count.hung > 0)
        shares.push_back({work,
            Percent::basisPoints(roundedQuotient(count.hung * 10'000, count.all)), DoneBy::ticks});
}

} // namespace

std::vector<DoneSaid> hungShares(const CutFigures& cut) {
    UnitCount windows;
    UnitCount doors;
    for (const OpeningUnit& unit : cut.units) {
        UnitCount& count = unit.opening.isWindow() ? windows : doors;
        ++count.all;
        if (stateOf(cut.sheet, unit.opening.id.value(), unit.unit) == PieceState::hung)
            ++count.hung;
    }
    std::vector<DoneSaid> shares;
    addShare(shares, PieceOfWork::doors, doors);
    addShare(shares, PieceOfWork::windows, windows);
    return shares;
}

std::vector<WorkBid> bidOf(const Book& book, const JobFigures& figures) {
    std::vector<WorkBid> sold = book.soldBid(figures.whole.plan.id);
    return sold.empty() ? workBids(figures.estimate) : sold;
}

} // namespace miterbook
