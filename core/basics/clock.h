// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"

#include <string>

namespace miterbook {

/// Where today and now come from: the machine in the program, a fixed value in tests.
class Clock {
public:
    virtual ~Clock() = default;
    virtual Date today() const = 0;
    /// UTC, ISO 8601 with seconds: `2026-11-25T06:07:46Z`.
    virtual std::string timestamp() const = 0;
};

class SystemClock final : public Clock {
public:
    Date today() const override;
    std::string timestamp() const override;
};

class FixedClock final : public Clock {
public:
    explicit FixedClock(Date today)
        : m_today(today) {}
    Date today() const override { return m_today; }
    std::string timestamp() const override { return isoDate(m_today) + "T12:00:00Z"; }

private:
    Date m_today;
};

} // namespace miterbook
