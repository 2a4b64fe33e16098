// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"
#include "basics/result.h"
#include "plan/plan_checks.h"

#include <string>

namespace miterbook {

/// Looks at the values of one row, one after the other, and keeps the first complaint.
class RowCheck {
public:
    explicit RowCheck(std::string name)
        : m_name(std::move(name)) {}

    /// Complains with "<name> <complaint>." unless `fine`.
    RowCheck& must(bool fine, std::string_view complaint) {
        if (!fine && m_result.ok())
            m_result = badInput(m_name + " " + std::string(complaint) + ".");
        return *this;
    }

    /// A length from 0 to `most`; more than 0 where it may not be missing.
    RowCheck& length(std::string_view what, Length value, Length most = longestSensible,
        Missing missing = Missing::allowed) {
        if (value < Length())
            return say(what, "is negative", value);
        if (value > most)
            return say(what, "is more than " + formatLengthWithUnit(most, feetAndInches), value);
        return must(value > Length() || missing == Missing::allowed, "has no " + std::string(what));
    }

    /// A whole number from `low` to `high`.
    RowCheck& number(std::string_view what, int value, int low, int high) {
        const std::string text = "has " + std::to_string(value) + " for its " + std::string(what)
            + "; it must be " + std::to_string(low) + " to " + std::to_string(high);
        return must(value >= low && value <= high, text);
    }

    Result<void> result() const { return m_result; }

private:
    static constexpr LengthStyle feetAndInches{LengthUnit::feetInches, 16};

    RowCheck& say(std::string_view what, const std::string& complaint, Length value) {
        return must(false,
            "has a " + std::string(what) + " of " + formatLengthWithUnit(value, feetAndInches)
                + ", which " + complaint);
    }

    std::string m_name;
    Result<void> m_result;
};

/// The name that begins a sentence: the row's own, or its noun where it has none.
inline std::string namedOr(const std::string& name, std::string_view noun) {
    return name.empty() ? "The " + std::string(noun) : name;
}

} // namespace miterbook
