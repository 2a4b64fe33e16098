// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/opening_words.h"

#include "io/decoded_text.h"

#include <array>

namespace miterbook {

namespace {

/// Folded, with hyphens, points and ampersands as blanks, and a blank at either end, so that whole
/// words can be looked for.
std::string wordsOf(std::string_view text) {
    std::string plain;
    for (const char c : foldedText(text))
        plain += c == '-' || c == '.' || c == '&' || c == '/' || c == ',' || c == '(' || c == ')'
            ? ' '
            : c;
    return " " + foldedText(plain) + " ";
}

template <class Value>
struct Said {
    std::string_view words;
    Value value;
};

/// The value of the first entry whose words stand in the text.
template <class List>
auto firstSaid(const List& list, std::string_view text) {
    const std::string plain = wordsOf(text);
    for (const auto& each : list) {
        if (plain.find(" " + std::string(each.words) + " ") != std::string::npos)
            return std::optional(each.value);
    }
    return decltype(std::optional(list.front().value))();
}

using enum OpeningKind;

// The stronger word first: "pair of bifolds" is a bifold, "exterior pocket" a pocket door.
constexpr std::array doorWords{
    Said<OpeningKind>{"cased opening", casedOpening},
    Said<OpeningKind>{"cased op", casedOpening},
    Said<OpeningKind>{"cased", casedOpening},
    Said<OpeningKind>{"c o", casedOpening},
    Said<OpeningKind>{"opening", casedOpening},
    Said<OpeningKind>{"bifold", bifoldDoor},
    Said<OpeningKind>{"bifolds", bifoldDoor},
    Said<OpeningKind>{"bi fold", bifoldDoor},
    Said<OpeningKind>{"bi folds", bifoldDoor},
    Said<OpeningKind>{"bypass", bypassDoor},
    Said<OpeningKind>{"by pass", bypassDoor},
    Said<OpeningKind>{"sliding closet", bypassDoor},
    Said<OpeningKind>{"pocket", pocketDoor},
    Said<OpeningKind>{"pkt", pocketDoor},
    Said<OpeningKind>{"exterior", exteriorDoor},
    Said<OpeningKind>{"ext", exteriorDoor},
    Said<OpeningKind>{"entry", exteriorDoor},
    Said<OpeningKind>{"front", exteriorDoor},
    Said<OpeningKind>{"garage", exteriorDoor},
    Said<OpeningKind>{"patio", exteriorDoor},
    Said<OpeningKind>{"sliding glass", exteriorDoor},
    Said<OpeningKind>{"sgd", exteriorDoor},
    Said<OpeningKind>{"double", doubleDoor},
    Said<OpeningKind>{"dbl", doubleDoor},
    Said<OpeningKind>{"french", doubleDoor},
    Said<OpeningKind>{"pair", doubleDoor},
    Said<OpeningKind>{"pr", doubleDoor},
    Said<OpeningKind>{"prehung", prehungDoor},
    Said<OpeningKind>{"pre hung", prehungDoor},
    Said<OpeningKind>{"single", prehungDoor},
    Said<OpeningKind>{"swing", prehungDoor},
    Said<OpeningKind>{"swinging", prehungDoor},
    Said<OpeningKind>{"hinged", prehungDoor},
    Said<OpeningKind>{"interior", prehungDoor},
    Said<OpeningKind>{"int", prehungDoor},
    Said<OpeningKind>{"panel", prehungDoor},
    Said<OpeningKind>{"flush", prehungDoor},
};

constexpr std::array styleWords{
    Said<TrimStyle>{"stool and apron", TrimStyle::stoolAndApron},
    Said<TrimStyle>{"stool apron", TrimStyle::stoolAndApron},
    Said<TrimStyle>{"sill and apron", TrimStyle::stoolAndApron},
    Said<TrimStyle>{"stool", TrimStyle::stoolAndApron},
    Said<TrimStyle>{"picture frame", TrimStyle::pictureFrame},
    Said<TrimStyle>{"picture framed", TrimStyle::pictureFrame},
    Said<TrimStyle>{"4 sided", TrimStyle::pictureFrame},
    Said<TrimStyle>{"four sided", TrimStyle::pictureFrame},
    Said<TrimStyle>{"4 sides", TrimStyle::pictureFrame},
    Said<TrimStyle>{"three sided", TrimStyle::threeSided},
    Said<TrimStyle>{"3 sided", TrimStyle::threeSided},
    Said<TrimStyle>{"3 sides", TrimStyle::threeSided},
    Said<TrimStyle>{"mitered", TrimStyle::threeSided},
    Said<TrimStyle>{"butted head", TrimStyle::buttedHead},
    Said<TrimStyle>{"butted", TrimStyle::buttedHead},
    Said<TrimStyle>{"butt head", TrimStyle::buttedHead},
    Said<TrimStyle>{"flat head", TrimStyle::buttedHead},
    Said<TrimStyle>{"drywall return", TrimStyle::drywallReturn},
    Said<TrimStyle>{"drywall returns", TrimStyle::drywallReturn},
    Said<TrimStyle>{"drywall", TrimStyle::drywallReturn},
    Said<TrimStyle>{"drywall wrap", TrimStyle::drywallReturn},
};

constexpr std::array handWords{
    Said<Hand>{"left", Hand::left},
    Said<Hand>{"lh", Hand::left},
    Said<Hand>{"lhr", Hand::left},
    Said<Hand>{"l", Hand::left},
    Said<Hand>{"right", Hand::right},
    Said<Hand>{"rh", Hand::right},
    Said<Hand>{"rhr", Hand::right},
    Said<Hand>{"r", Hand::right},
    Said<Hand>{"none", Hand::none},
    Said<Hand>{"n a", Hand::none},
    Said<Hand>{"na", Hand::none},
    Said<Hand>{"pair", Hand::none},
};

constexpr std::array lockWords{
    Said<Lockset>{"privacy", Lockset::privacy},
    Said<Lockset>{"bed bath", Lockset::privacy},
    Said<Lockset>{"priv", Lockset::privacy},
    Said<Lockset>{"passage", Lockset::passage},
    Said<Lockset>{"pass", Lockset::passage},
    Said<Lockset>{"hall closet", Lockset::passage},
    Said<Lockset>{"dummy", Lockset::dummy},
    Said<Lockset>{"keyed", Lockset::keyed},
    Said<Lockset>{"entry", Lockset::keyed},
    Said<Lockset>{"entrance", Lockset::keyed},
    Said<Lockset>{"by others", Lockset::none},
    Said<Lockset>{"none", Lockset::none},
    Said<Lockset>{"deadbolt", Lockset::none},
    Said<Lockset>{"pull", Lockset::none},
    Said<Lockset>{"pulls", Lockset::none},
};

using Shaped = WindowShape::Kind;

constexpr std::array shapeWords{
    Said<Shaped>{"half round", Shaped::halfRound},
    Said<Shaped>{"round top", Shaped::halfRound},
    Said<Shaped>{"arch", Shaped::arch},
    Said<Shaped>{"arched", Shaped::arch},
    Said<Shaped>{"arch top", Shaped::arch},
    Said<Shaped>{"segmental", Shaped::arch},
    Said<Shaped>{"eyebrow", Shaped::arch},
    Said<Shaped>{"octagon", Shaped::octagon},
    Said<Shaped>{"trapezoid", Shaped::unknown},
    Said<Shaped>{"triangle", Shaped::unknown},
    Said<Shaped>{"gable", Shaped::unknown},
    Said<Shaped>{"peak", Shaped::unknown},
    Said<Shaped>{"hexagon", Shaped::unknown},
    Said<Shaped>{"pentagon", Shaped::unknown},
    Said<Shaped>{"round", Shaped::unknown},
    Said<Shaped>{"circle", Shaped::unknown},
    Said<Shaped>{"oval", Shaped::unknown},
    Said<Shaped>{"polygon", Shaped::unknown},
};

constexpr std::array mullWords{
    Said<int>{"twin", 1},
    Said<int>{"double mull", 1},
    Said<int>{"mulled pair", 1},
    Said<int>{"pair", 1},
    Said<int>{"2 wide", 1},
    Said<int>{"triple", 2},
    Said<int>{"triple mull", 2},
    Said<int>{"3 wide", 2},
    Said<int>{"quad", 3},
    Said<int>{"4 wide", 3},
};

} // namespace

std::optional<OpeningKind> doorKind(std::string_view type) {
    return firstSaid(doorWords, type);
}

std::optional<TrimStyle> trimStyle(std::string_view text) {
    return firstSaid(styleWords, text);
}

std::optional<Hand> handOf(std::string_view text) {
    return firstSaid(handWords, text);
}

std::optional<Lockset> locksetOf(std::string_view text) {
    return firstSaid(lockWords, text);
}

WindowShape windowShape(std::string_view type) {
    const std::string plain = wordsOf(type);
    for (const auto& each : shapeWords) {
        if (plain.find(" " + std::string(each.words) + " ") != std::string::npos)
            return {each.value, each.words};
    }
    return {};
}

int mullsOf(std::string_view type) {
    return firstSaid(mullWords, type).value_or(0);
}

std::optional<Length> framedWall(std::string_view text) {
    std::string plain = foldedText(text);
    std::erase_if(plain, [](char c) { return c == ' ' || c == '"'; });
    if (plain == "2x4")
        return Length::sixteenths(4 * 16 + 9);
    if (plain == "2x6")
        return Length::sixteenths(6 * 16 + 9);
    return std::nullopt;
}

} // namespace miterbook
