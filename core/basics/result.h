// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>

namespace miterbook {

/// What kind of thing went wrong; the sentence says it to the user.
enum class Fault {
    badInput,  ///< something typed or imported cannot be read or is absurd
    notFound,  ///< a name or id that is not in the book
    conflict,  ///< the book holds something else than the edit expected
    storage,   ///< the file could not be read or written
    notOurs,   ///< a file that is not a Miterbook book, or a newer one
    cancelled, ///< the user stopped it
};

/// A failure: its kind and one clear sentence for the user (what was wrong, and where).
struct Error {
    Fault fault = Fault::badInput;
    std::string sentence;

    bool operator==(const Error&) const = default;
};

/// A value or the Error that kept it from being made.
template <class T>
class [[nodiscard]] Result {
public:
    Result(T value)
        : m_state(std::move(value)) {}
    Result(Error error)
        : m_state(std::move(error)) {}

    bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }

    const T& value() const& {
        assert(ok());
        return *std::get_if<0>(&m_state);
    }
    T& value() & {
        assert(ok());
        return *std::get_if<0>(&m_state);
    }
    T&& value() && {
        assert(ok());
        return std::move(*std::get_if<0>(&m_state));
    }
    const T& operator*() const& { return value(); }
    T& operator*() & { return value(); }
    const T* operator->() const { return &value(); }
    T* operator->() { return &value(); }

    const Error& error() const {
        assert(!ok());
        return *std::get_if<1>(&m_state);
    }
    T valueOr(T fallback) const { return ok() ? value() : std::move(fallback); }

private:
    std::variant<T, Error> m_state;
};

/// Done, or the Error that kept it from being done.
template <>
class [[nodiscard]] Result<void> {
public:
    Result() = default;
    Result(Error error)
        : m_error(std::move(error))
        , m_ok(false) {}

    bool ok() const { return m_ok; }
    explicit operator bool() const { return m_ok; }
    const Error& error() const {
        assert(!m_ok);
        return m_error;
    }

private:
    Error m_error;
    bool m_ok = true;
};

/// Shorthand for the commonest failure.
inline Error badInput(std::string sentence) {
    return {Fault::badInput, std::move(sentence)};
}

} // namespace miterbook
