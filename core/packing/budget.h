// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <functional>
#include <limits>
#include <utility>

namespace miterbook::packing {

// How much a solver may do. It reports work in units of about a thousand elementary steps (a
// microsecond or less) and polls between them; a clock or a cancel button belongs into `stop`,
// which is asked about every 500 units. With a work limit and no stop, results are the same on
// every run and every machine.
class Budget {
public:
    using Stop = std::function<bool()>;
    static constexpr std::int64_t noLimit = std::numeric_limits<std::int64_t>::max();

    explicit Budget(std::int64_t workLimit = noLimit, Stop stop = {})
        : m_limit(workLimit)
        , m_stop(std::move(stop)) {}

    // Books the work done; false once the budget is used up, and ever after.
    bool spend(std::int64_t units) {
        m_spent += units;
        if (m_spent >= m_limit)
            m_exhausted = true;
        m_sinceAsked += units;
        if (m_sinceAsked >= askEvery && !m_exhausted && m_stop) {
            m_sinceAsked = 0;
            m_exhausted = m_stop();
        }
        return !m_exhausted;
    }
    // A part of this budget, booked here as it is used.
    Budget part(std::int64_t work) {
        return Budget(work, [this] { return !spend(askEvery); });
    }
    bool exhausted() const { return m_exhausted; }
    std::int64_t spent() const { return m_spent; }

private:
    static constexpr std::int64_t askEvery = 500;
    std::int64_t m_limit;
    Stop m_stop;
    std::int64_t m_spent = 0;
    std::int64_t m_sinceAsked = 0;
    bool m_exhausted = false;
};

} // namespace miterbook::packing
