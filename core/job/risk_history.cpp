// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/risk_history.h"

#include "job/house_review.h"

namespace miterbook {

std::vector<FinishedWork> finishedWorks(const Book& book) {
    std::vector<FinishedWork> finished;
    for (const HouseResult& house : finishedResults(book)) {
        for (const WorkResult& work : house.works)
            finished.push_back({house.house.value(), work.work, work.bid, work.used});
    }
    return finished;
}

bool touchesHistory(const std::vector<Change>& changes) {
    return touches<House, SoldWork, TimeEntry>(changes);
}

} // namespace miterbook
