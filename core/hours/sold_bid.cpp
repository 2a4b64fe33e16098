// SPDX-License-Identifier: GPL-3.0-or-later
#include "hours/sold_bid.h"

#include <cmath>

namespace miterbook {

SoldWork soldWork(const WorkBid& bid) {
    return {{}, {}, bid.work, bid.hours, bid.labour, bid.units, bid.cost, bid.price};
}

WorkBid workBid(const SoldWork& sold) {
    return {sold.work, sold.hours, sold.labour, sold.units, sold.cost, sold.price};
}

SoldTask soldTask(const EstimateLine& line) {
    return {{}, {}, line.work, line.task, line.conditions,
        Percent::basisPoints(std::llround(line.factor * 10'000)), line.quantity, line.hours};
}

EstimateLine estimateLine(const SoldTask& sold) {
    EstimateLine line;
    line.work = sold.work;
    line.task = sold.task;
    line.conditions = sold.conditions;
    line.factor = sold.factor.fraction();
    line.quantity = sold.quantity;
    line.hours = sold.hours;
    return line;
}

} // namespace miterbook
