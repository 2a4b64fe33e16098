// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/plan_refs.h"
#include "job/row_json.h"

#include <string>
#include <vector>

namespace miterbook {

/// How a value of a row stands in an exchange text: `static Json write(const T&, const PlanRefs&)`,
/// `static Result<T> read(const Json&, const PlanRefs&)`, whose error says what is wrong with it.
template <class T>
struct ExchangeForm;

/// What a person may write as text or as a plain number; an error for anything else.
Result<std::string> textIn(const Json& json);

template <>
struct ExchangeForm<std::string> {
    static Json write(const std::string& text, const PlanRefs&) { return text; }
    static Result<std::string> read(const Json& json, const PlanRefs&);
};

template <>
struct ExchangeForm<bool> {
    static Json write(bool value, const PlanRefs&) { return value; }
    static Result<bool> read(const Json& json, const PlanRefs&);
};

/// Counts: 0 to a million.
template <>
struct ExchangeForm<int> {
    static Json write(int value, const PlanRefs&) { return value; }
    static Result<int> read(const Json& json, const PlanRefs&);
};

/// With a minus where a place is left of or above the plan's zero; the checks of rows refuse
/// others.
template <>
struct ExchangeForm<Length> {
    static Json write(Length length, const PlanRefs&);
    static Result<Length> read(const Json& json, const PlanRefs&);
};

/// A number of degrees with at most two decimals.
template <>
struct ExchangeForm<Angle> {
    static Json write(Angle angle, const PlanRefs&);
    static Result<Angle> read(const Json& json, const PlanRefs&);
};

template <>
struct ExchangeForm<Money> {
    static Json write(Money money, const PlanRefs&);
    static Result<Money> read(const Json& json, const PlanRefs&);
};

template <>
struct ExchangeForm<Quantity> {
    static Json write(Quantity quantity, const PlanRefs&);
    static Result<Quantity> read(const Json& json, const PlanRefs&);
};

/// The outline as it is typed where that is exact, else a list of walls.
template <>
struct ExchangeForm<std::vector<Wall>> {
    static Json write(const std::vector<Wall>& walls, const PlanRefs& refs);
    static Result<std::vector<Wall>> read(const Json& json, const PlanRefs& refs);
};

/// Corners as pairs: [["0", "-14 1/2"], ...].
template <>
struct ExchangeForm<std::vector<PlanPoint>> {
    static Json write(const std::vector<PlanPoint>& points, const PlanRefs& refs);
    static Result<std::vector<PlanPoint>> read(const Json& json, const PlanRefs& refs);
};

template <>
struct ExchangeForm<std::vector<BaseBreak>> {
    static Json write(const std::vector<BaseBreak>& breaks, const PlanRefs& refs);
    static Result<std::vector<BaseBreak>> read(const Json& json, const PlanRefs& refs);
};

/// A file as base64.
template <>
struct ExchangeForm<Bytes> {
    static Json write(const Bytes& bytes, const PlanRefs&);
    static Result<Bytes> read(const Json& json, const PlanRefs&);
};

template <>
struct ExchangeForm<std::vector<PolygonSide>> {
    static Json write(const std::vector<PolygonSide>& sides, const PlanRefs& refs);
    static Result<std::vector<PolygonSide>> read(const Json& json, const PlanRefs& refs);
};

/// "picture frame, stool and apron, ..." for the sentence on an unknown word.
template <Worded E>
std::string allWords() {
    std::string all;
    for (const auto& entry : Words<E>::list)
        all += (all.empty() ? "" : ", ") + std::string(entry.text);
    return all;
}

template <Worded E>
struct ExchangeForm<E> {
    static Json write(E value, const PlanRefs&) { return std::string(word(value)); }
    static Result<E> read(const Json& json, const PlanRefs&) {
        const auto text = textIn(json);
        if (!text)
            return text.error();
        const auto value = fromWord<E>(*text);
        if (!value)
            return badInput("\"" + *text + "\" is none of " + allWords<E>() + ".");
        return *value;
    }
};

/// A reference: a name, a place "#3", or null for none.
template <class Row>
struct ExchangeForm<Id<Row>> {
    static Json write(Id<Row> id, const PlanRefs& refs) {
        return id ? Json(refs.textOf(id)) : Json();
    }
    static Result<Id<Row>> read(const Json& json, const PlanRefs& refs) {
        if (json.is_null())
            return Id<Row>();
        const auto text = textIn(json);
        if (!text)
            return text.error();
        const auto id = refs.of<Row>().find(*text);
        if (!id)
            return id.error();
        return Id<Row>(*id);
    }
};

} // namespace miterbook
