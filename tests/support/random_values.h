// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/any_row.h"
#include "job/stored_form.h"

#include <array>
#include <chrono>
#include <cstdint>
#include <random>
#include <string>
#include <vector>

namespace miterbook {

/// Pseudo-random values of every type that a row's member has; the same seed gives the same values
/// on every machine (std::mt19937 is specified to the bit, the distributions of <random> are not).
class RandomValues {
public:
    explicit RandomValues(std::uint32_t seed)
        : m_engine(seed) {}

    /// 0 to below `count`; 0 for a count of 0.
    std::size_t below(std::size_t count) { return count == 0 ? 0 : m_engine() % count; }

    void fill(int& value) { value = static_cast<int>(below(2000)) - 1000; }
    void fill(bool& value) { value = below(2) == 1; }
    void fill(std::string& value) {
        value = texts[below(texts.size())] + std::to_string(below(1000));
    }
    void fill(LongText& value) { fill(value.text); }
    void fill(Date& value) {
        const int day = static_cast<int>(below(20'000));
        value = day == 0
            ? noDate
            : Date(std::chrono::sys_days(std::chrono::year(2020) / 1 / 1) + std::chrono::days(day));
    }
    void fill(Conditions& value) {
        value = {};
        for (const auto& each : Words<Condition>::list) {
            if (below(2) == 1)
                value.add(each.value);
        }
    }
    void fill(Bytes& value) {
        std::string content(below(9), '\0');
        for (char& c : content)
            c = static_cast<char>(below(256));
        value = Bytes(std::move(content));
    }
    template <Worded E>
    void fill(E& value) {
        value = Words<E>::list[below(Words<E>::list.size())].value;
    }
    /// Lengths, money, percentages...: any whole number, large and negative ones too.
    template <StoredNumber T>
    void fill(T& value) {
        const auto number = static_cast<std::int64_t>(m_engine()) * m_engine();
        value = *WholeForm<T>::read(below(8) == 0 ? -number : number / 1'000'000);
    }
    template <Described Value>
    void fill(Value& value) {
        forEachField<Value>([&](const auto& field) { fill(value.*field.member); });
    }
    /// One to four entries.
    template <Described Value>
    void fill(std::vector<Value>& list) {
        list.assign(1 + below(4), Value());
        for (Value& each : list)
            fill(each);
    }

private:
    /// What people and hostile files put into a text.
    static constexpr std::array<const char*, 8> texts{"Great room ", "Außen – ½″ × 8′ ",
        "\"quoted\", it's; -- ", "two\nlines\t", "=1+1 ", "木工 🪚 ", "<b>&amp; ", ""};

    std::mt19937 m_engine;
};

} // namespace miterbook
