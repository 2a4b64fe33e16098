// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <optional>
#include <string_view>

namespace miterbook {

/// An enumerator and its one trade word, on screens, papers, in the book file and exchange text.
template <class E>
struct Word {
    E value;
    std::string_view text;
};

template <class E, class T>
Word(E, T) -> Word<E>;

/// Specialised beside each enumeration: `static constexpr std::array list{Word{E::a, "a"}, ...}`.
template <class E>
struct Words;

template <class E>
concept Worded = requires {
    Words<E>::list.size();
};

/// The trade word of an enumerator.
template <Worded E>
constexpr std::string_view word(E value) {
    for (const auto& entry : Words<E>::list) {
        if (entry.value == value)
            return entry.text;
    }
    return {};
}

/// The enumerator of a trade word, exactly as written; nothing when there is none.
template <Worded E>
constexpr std::optional<E> fromWord(std::string_view text) {
    for (const auto& entry : Words<E>::list) {
        if (entry.text == text)
            return entry.value;
    }
    return std::nullopt;
}

} // namespace miterbook
