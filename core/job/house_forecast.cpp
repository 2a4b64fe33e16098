// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/house_forecast.h"

#include "cut/progress.h"

#include <algorithm>

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

std::vector<DoneSaid> hungShares(const Book& book, const JobFigures& figures) {
    const Id<Plan> work = figures.whole.plan.id;
    const bool anyHung = std::ranges::any_of(book.sheet(work).of<CutPiece>(),
        [](const auto& entry) { return entry.second.state == PieceState::hung; });
    return anyHung ? hungShares(cutFiguresFor(book, figures)) : std::vector<DoneSaid>();
}

HouseBid wonBid(std::vector<WorkBid> works) {
    const Money crewRate = crewRateIn(works);
    return {std::move(works), crewRate};
}

HouseBid houseBid(const Book& book, const JobFigures& figures) {
    std::vector<WorkBid> won = book.soldBid(figures.whole.plan.id);
    if (!won.empty())
        return wonBid(std::move(won));
    return {workBids(figures.estimate), figures.estimate.crewRate};
}

HouseProgress houseForecast(
    const Book& book, const House& house, const HouseBid& bid, const std::vector<DoneSaid>& hung) {
    if (isFinished(house)) { // whatever was said of it before
        HouseProgress progress = houseProgress(bid.works, book.time.summedEntries(house.id));
        finishProgress(progress);
        return progress;
    }
    std::vector<DoneSaid> shares = hung;
    for (const auto& [id, said] : book.jobs.of<WorkDone>()) {
        if (said.house == house.id)
            shares.push_back({said.work, said.done, DoneBy::said});
    }
    return houseProgress(bid.works, book.time.summedEntries(house.id), shares);
}

} // namespace miterbook
