// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/result.h"

#include <functional>
#include <map>

namespace miterbook {

/// What is to happen on which day; done by day, and on one day in the order in which it was written
/// down. What is done may write down more.
class SampleDiary {
public:
    using Act = std::function<Result<void>(Date)>;

    void on(Date day, Act act) { m_ahead.emplace(day, std::move(act)); }

    /// Does everything up to a day, that day included. Error: the first act's that fails.
    Result<void> liveUntil(Date last) {
        while (!m_ahead.empty() && m_ahead.begin()->first <= last) {
            const auto next = m_ahead.extract(m_ahead.begin());
            if (auto done = next.mapped()(next.key()); !done)
                return done;
        }
        return {};
    }

private:
    std::multimap<Date, Act> m_ahead;
};

} // namespace miterbook
