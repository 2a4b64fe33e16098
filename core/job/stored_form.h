// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/angle.h"
#include "basics/base64.h"
#include "basics/bytes.h"
#include "basics/date.h"
#include "basics/hours.h"
#include "basics/id.h"
#include "basics/length.h"
#include "basics/long_text.h"
#include "basics/money.h"
#include "basics/percent.h"
#include "basics/quantity.h"
#include "basics/words.h"
#include "book/condition.h"

#include <cstdint>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// How a value stands in the book file and the journal as a whole number in its own smallest unit
/// (nanometres, cents, minutes...); the one place that says so. Specialisations have
/// `static int64 write(T)` and `static optional<T> read(int64)`, nothing when out of range.
template <class T>
struct WholeForm;

template <>
struct WholeForm<std::int64_t> {
    static std::int64_t write(std::int64_t value) { return value; }
    static std::optional<std::int64_t> read(std::int64_t number) { return number; }
};

template <>
struct WholeForm<int> {
    static std::int64_t write(int value) { return value; }
    static std::optional<int> read(std::int64_t number) {
        using Limits = std::numeric_limits<int>;
        if (number < Limits::min() || number > Limits::max())
            return std::nullopt;
        return static_cast<int>(number);
    }
};

template <>
struct WholeForm<bool> {
    static std::int64_t write(bool value) { return value ? 1 : 0; }
    static std::optional<bool> read(std::int64_t number) {
        if (number != 0 && number != 1)
            return std::nullopt;
        return number == 1;
    }
};

/// None is 0 here; the book file writes it as NULL.
template <class T>
struct WholeForm<Id<T>> {
    static std::int64_t write(Id<T> id) { return id.value(); }
    static std::optional<Id<T>> read(std::int64_t number) {
        if (number < 0)
            return std::nullopt;
        return Id<T>(number);
    }
};

/// A value class around one int64, by the functions that open and close it.
template <class T, std::int64_t (T::*Number)() const, T (*Make)(std::int64_t)>
struct WrappedForm {
    static std::int64_t write(T value) { return (value.*Number)(); }
    static std::optional<T> read(std::int64_t number) { return Make(number); }
};

template <>
struct WholeForm<Length> : WrappedForm<Length, &Length::nm, &Length::nanometres> {};
template <>
struct WholeForm<Money> : WrappedForm<Money, &Money::cents, &Money::cents> {};
template <>
struct WholeForm<UnitPrice>
    : WrappedForm<UnitPrice, &UnitPrice::tenThousandths, &UnitPrice::tenThousandths> {};
template <>
struct WholeForm<Percent> : WrappedForm<Percent, &Percent::basisPoints, &Percent::basisPoints> {};
template <>
struct WholeForm<Hours> : WrappedForm<Hours, &Hours::minutes, &Hours::minutes> {};
template <>
struct WholeForm<MinutesPerUnit>
    : WrappedForm<MinutesPerUnit, &MinutesPerUnit::hundredths, &MinutesPerUnit::hundredths> {};
template <>
struct WholeForm<Quantity> : WrappedForm<Quantity, &Quantity::thousandths, &Quantity::thousandths> {
};
template <>
struct WholeForm<Angle> : WrappedForm<Angle, &Angle::hundredths, &Angle::hundredths> {};

/// The same for what stands as text: `static string write(const T&)`, `static optional<T>
/// read(string_view)`, nothing for text that is no such value.
template <class T>
struct TextForm;

template <>
struct TextForm<std::string> {
    static const std::string& write(const std::string& text) { return text; }
    static std::optional<std::string> read(std::string_view text) { return std::string(text); }
};

template <>
struct TextForm<LongText> {
    static const std::string& write(const LongText& value) { return value.text; }
    static std::optional<LongText> read(std::string_view text) {
        return LongText{std::string(text)};
    }
};

template <Worded E>
struct TextForm<E> {
    static std::string write(E value) { return std::string(word(value)); }
    static std::optional<E> read(std::string_view text) { return fromWord<E>(text); }
};

/// Words with commas between them.
template <>
struct TextForm<Conditions> {
    static std::string write(Conditions conditions);
    static std::optional<Conditions> read(std::string_view text);
};

template <>
struct TextForm<Bytes> {
    static std::string write(const Bytes& bytes) { return toBase64(bytes.content()); }
    static std::optional<Bytes> read(std::string_view text) {
        auto content = fromBase64(text);
        return content ? std::optional(Bytes(*std::move(content))) : std::nullopt;
    }
};

/// No date is empty text here; the book file writes it as NULL.
template <>
struct TextForm<Date> {
    static std::string write(Date date) { return isoDate(date); }
    static std::optional<Date> read(std::string_view text) {
        const auto date = parseIsoDate(text);
        return date ? std::optional(*date) : std::nullopt;
    }
};

template <class T>
concept StoredWhole = requires(const T& value) {
    WholeForm<T>::write(value);
};

template <class T>
concept StoredText = requires(const T& value) {
    TextForm<T>::write(value);
};

template <class T>
inline constexpr bool isId = false;
template <class T>
inline constexpr bool isId<Id<T>> = true;

/// A whole number that is no reference.
template <class T>
concept StoredNumber = StoredWhole<T> && !isId<T>;

template <class T>
inline constexpr bool isList = false;
template <class T>
inline constexpr bool isList<std::vector<T>> = true;

} // namespace miterbook
