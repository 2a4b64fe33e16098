// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/exchange_form.h"

#include "basics/base64.h"
#include "basics/number_text.h"
#include "io/exact_length.h"
#include "io/exchange_row.h"
#include "job/text_check.h"
#include "plan/room_text.h"

#include <cmath>

namespace miterbook {

namespace {

constexpr int largestCount = 1'000'000;

/// The outline in feet without inch marks, which JSON would have to escape: `12' x 14' 6`.
std::string outlineText(const std::vector<Wall>& walls) {
    std::string text = formatWalls(walls, {LengthUnit::feetInches, 32});
    for (std::size_t at = text.find("' 0\""); at != std::string::npos; at = text.find("' 0\""))
        text.replace(at, 4, "'");
    std::erase(text, '"');
    return text;
}

template <class Value>
Json writeList(const std::vector<Value>& list, const PlanRefs& refs) {
    Json array = Json::array();
    for (const Value& each : list)
        array.push_back(writeValue(each, refs));
    return array;
}

template <class Value>
Result<std::vector<Value>> readList(const Json& json, const PlanRefs& refs) {
    if (!json.is_array())
        return badInput("a list is needed.");
    std::vector<Value> list;
    for (const Json& each : json) {
        auto value = readRow(each, Value(), refs);
        if (!value)
            return badInput(std::string(Describe<Value>::noun) + " "
                + std::to_string(list.size() + 1) + ": " + value.error().sentence);
        list.push_back(std::move(value).value());
    }
    return list;
}

} // namespace

Result<std::string> textIn(const Json& json) {
    if (json.is_string())
        return json.get<std::string>();
    if (json.is_number())
        return jsonText(json);
    return badInput("a text or number is needed.");
}

Result<std::string> ExchangeForm<std::string>::read(const Json& json, const PlanRefs&) {
    auto text = textIn(json);
    if (text && !isSoundText(*text))
        return badInput("the text holds characters that cannot be kept.");
    return text;
}

Result<bool> ExchangeForm<bool>::read(const Json& json, const PlanRefs&) {
    if (!json.is_boolean())
        return badInput("true or false is needed.");
    return json.get<bool>();
}

Result<int> ExchangeForm<int>::read(const Json& json, const PlanRefs&) {
    const auto number = wholeNumber(json);
    if (!number || *number < 0 || *number > largestCount)
        return badInput("a whole number from 0 to a million is needed.");
    return static_cast<int>(*number);
}

Json ExchangeForm<Length>::write(Length length, const PlanRefs&) {
    return exactLengthText(length);
}

Result<Length> ExchangeForm<Length>::read(const Json& json, const PlanRefs&) {
    const auto text = textIn(json);
    if (!text)
        return text.error();
    const bool minus = text->starts_with('-');
    const auto length = readExactLength(std::string_view(*text).substr(minus ? 1 : 0));
    return length && minus ? Result<Length>(-*length) : length;
}

Json ExchangeForm<Angle>::write(Angle angle, const PlanRefs&) {
    if (angle.hundredths() % 100 == 0)
        return angle.hundredths() / 100;
    return angle.toDegrees();
}

Result<Angle> ExchangeForm<Angle>::read(const Json& json, const PlanRefs&) {
    if (!json.is_number())
        return badInput("a number of degrees is needed.");
    const double hundredths = json.get<double>() * 100;
    if (!(std::abs(hundredths) <= 36'000) || std::abs(hundredths - std::round(hundredths)) > 1e-6)
        return badInput("degrees have at most two decimals and are within a full turn.");
    return Angle::hundredths(std::llround(hundredths));
}

Json ExchangeForm<Money>::write(Money money, const PlanRefs&) {
    return formatMoney(money);
}

Result<Money> ExchangeForm<Money>::read(const Json& json, const PlanRefs&) {
    const auto text = textIn(json);
    return text ? parseMoney(*text) : Result<Money>(text.error());
}

Json ExchangeForm<Quantity>::write(Quantity quantity, const PlanRefs&) {
    return formatQuantity(quantity, 3);
}

Result<Quantity> ExchangeForm<Quantity>::read(const Json& json, const PlanRefs&) {
    const auto text = textIn(json);
    return text ? parseQuantity(*text) : Result<Quantity>(text.error());
}

Json ExchangeForm<std::vector<Wall>>::write(const std::vector<Wall>& walls, const PlanRefs& refs) {
    const std::string text = outlineText(walls);
    const auto again = parseWalls(text, LengthUnit::inches);
    if (again && *again == walls)
        return text;
    return writeList(walls, refs);
}

Result<std::vector<Wall>> ExchangeForm<std::vector<Wall>>::read(
    const Json& json, const PlanRefs& refs) {
    if (json.is_string())
        return parseWalls(json.get_ref<const std::string&>(), LengthUnit::inches);
    return readList<Wall>(json, refs);
}

Json ExchangeForm<std::vector<PlanPoint>>::write(
    const std::vector<PlanPoint>& points, const PlanRefs& refs) {
    Json array = Json::array();
    for (const PlanPoint& point : points)
        array.push_back(Json::array({ExchangeForm<Length>::write(point.x, refs),
            ExchangeForm<Length>::write(point.y, refs)}));
    return array;
}

Result<std::vector<PlanPoint>> ExchangeForm<std::vector<PlanPoint>>::read(
    const Json& json, const PlanRefs& refs) {
    if (!json.is_array())
        return badInput("a list of corners is needed.");
    std::vector<PlanPoint> points;
    for (const Json& each : json) {
        const std::string corner = "corner " + std::to_string(points.size() + 1) + ": ";
        if (!each.is_array() || each.size() != 2)
            return badInput(corner + "two lengths in brackets are needed.");
        const auto x = ExchangeForm<Length>::read(each[0], refs);
        const auto y = ExchangeForm<Length>::read(each[1], refs);
        if (!x || !y)
            return badInput(corner + (x ? y : x).error().sentence);
        points.push_back({*x, *y});
    }
    return points;
}

Json ExchangeForm<std::vector<BaseBreak>>::write(
    const std::vector<BaseBreak>& breaks, const PlanRefs& refs) {
    return writeList(breaks, refs);
}

Result<std::vector<BaseBreak>> ExchangeForm<std::vector<BaseBreak>>::read(
    const Json& json, const PlanRefs& refs) {
    return readList<BaseBreak>(json, refs);
}

Json ExchangeForm<Bytes>::write(const Bytes& bytes, const PlanRefs&) {
    return toBase64(bytes.content());
}

Result<Bytes> ExchangeForm<Bytes>::read(const Json& json, const PlanRefs&) {
    auto content = json.is_string() ? fromBase64(json.get_ref<const std::string&>()) : std::nullopt;
    if (!content)
        return badInput("the file's content in base64 is needed.");
    return Bytes(*std::move(content));
}

Json ExchangeForm<std::vector<PolygonSide>>::write(
    const std::vector<PolygonSide>& sides, const PlanRefs& refs) {
    return writeList(sides, refs);
}

Result<std::vector<PolygonSide>> ExchangeForm<std::vector<PolygonSide>>::read(
    const Json& json, const PlanRefs& refs) {
    return readList<PolygonSide>(json, refs);
}

} // namespace miterbook
