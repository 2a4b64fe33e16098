// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/blank.h"
#include "basics/number_text.h"
#include "basics/result.h"
#include "basics/table.h"

#include <algorithm>
#include <string>

namespace miterbook {

/// Sentences are gathered until the first that fails.
class Checks {
public:
    Checks& require(bool holds, const std::string& sentence) {
        if (m_result && !holds)
            m_result = badInput(sentence);
        return *this;
    }
    /// From low to high, both allowed; `what` begins the sentence.
    Checks& between(Percent value, int low, int high, const std::string& what) {
        return require(value >= Percent::whole(low) && value <= Percent::whole(high),
            what + " of " + formatPercent(value) + " % is not between " + std::to_string(low)
                + " % and " + std::to_string(high) + " %.");
    }
    Checks& between(Money value, Money high, const std::string& what) {
        return require(value >= Money() && value <= high,
            what + " of " + formatMoney(value) + " is not between 0 and " + formatMoney(high)
                + ".");
    }
    Result<void> result() const { return m_result; }

private:
    Result<void> m_result;
};

/// Whether another row of the table is the same by `same`.
template <class Row, class Same>
bool anotherIs(const Table<Row>& table, const Row& row, Same same) {
    return std::ranges::any_of(
        table, [&](const auto& entry) { return entry.first != row.id && same(entry.second); });
}

} // namespace miterbook
