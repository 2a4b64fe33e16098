// SPDX-License-Identifier: GPL-3.0-or-later
#include "cut/assembly_line.h"

#include <algorithm>
#include <cmath>

namespace miterbook {

namespace {

/// The moments at which clamps come free, in the order the clamps are taken.
class Clamps {
public:
    explicit Clamps(int count)
        : m_free(static_cast<std::size_t>(std::max(count, 1)), 0.0) {}

    double nextFree() const { return m_free[m_next]; }
    void take(double until) {
        m_free[m_next] = until;
        m_next = (m_next + 1) % m_free.size();
    }

private:
    std::vector<double> m_free;
    std::size_t m_next = 0;
};

CornerWork workOf(const WayOfJoining& way, bool fastened) {
    CornerWork work = way.corner;
    work.makeUp += fastened ? way.fastenerMinutes : 0.0;
    return work;
}

} // namespace

std::vector<SetTimes> runAssembly(const std::vector<int>& corners, const CornerWork& work) {
    Clamps clamps(work.clamps);
    std::vector<SetTimes> times;
    times.reserve(corners.size());
    double finished = 0;
    for (const int count : corners) {
        SetTimes set{finished, finished, finished};
        for (int corner = 0; corner < count; ++corner) {
            const double start = std::max(finished, clamps.nextFree());
            finished = start + work.makeUp;
            clamps.take(finished + work.dwell);
            if (corner == 0)
                set.begun = start;
            set.made = finished;
            set.off = finished + work.dwell;
        }
        times.push_back(set);
    }
    return times;
}

double minutesPerCorner(const CornerWork& work) {
    return std::max(work.makeUp, (work.makeUp + work.dwell) / std::max(work.clamps, 1));
}

int clampsThatNeverWait(const CornerWork& work) {
    if (work.makeUp <= 0)
        return 1;
    return static_cast<int>(std::ceil(1 + std::max(work.dwell, 0.0) / work.makeUp - 1e-9));
}

double setsPerHour(const CornerWork& work, int corners) {
    const double minutes = corners * minutesPerCorner(work);
    return minutes > 0 ? 60.0 / minutes : 0.0;
}

SetCost setCost(const WayOfJoining& way, int corners, Length width, double centsPerHour) {
    SetCost cost;
    cost.fastened = fastenersPerCorner(width, way.fastenerOver) > 0;
    const CornerWork work = workOf(way, cost.fastened);
    cost.minutes = corners * work.makeUp;
    cost.cents = cost.minutes / 60.0 * centsPerHour + corners * way.centsPerCorner
        + corners * fastenersPerCorner(width, way.fastenerOver) * way.fastenerCents;
    cost.clamps = clampsThatNeverWait(work);
    cost.setsPerHour = setsPerHour(work, corners);
    return cost;
}

int fastenersPerCorner(Length width, Length over) {
    if (width <= over)
        return 0;
    return width >= Length::inches(5) ? 2 : 1;
}

} // namespace miterbook
