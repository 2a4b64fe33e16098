// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <compare>
#include <cstdint>
#include <functional>

namespace miterbook {

/// The identity of a row of kind T in the book. 0 means "none"; the store writes none as NULL.
template <class T>
class Id {
public:
    constexpr Id() = default;
    constexpr explicit Id(std::int64_t value)
        : m_value(value) {}

    constexpr std::int64_t value() const { return m_value; }
    constexpr explicit operator bool() const { return m_value != 0; }
    constexpr auto operator<=>(const Id&) const = default;

private:
    std::int64_t m_value = 0;
};

/// Hands out ids that no row of the book has had before; one sequence serves every kind of row.
class IdSource {
public:
    explicit IdSource(std::int64_t last = 0)
        : m_last(last) {}

    template <class T>
    Id<T> next() {
        return Id<T>(++m_last);
    }
    std::int64_t last() const { return m_last; }
    /// Never hands out `value` or anything below it afterwards.
    void skipTo(std::int64_t value) {
        if (value > m_last)
            m_last = value;
    }

private:
    std::int64_t m_last;
};

} // namespace miterbook

template <class T>
struct std::hash<miterbook::Id<T>> {
    std::size_t operator()(miterbook::Id<T> id) const noexcept {
        return std::hash<std::int64_t>{}(id.value());
    }
};
