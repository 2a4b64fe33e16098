// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/said_words.h"

namespace miterbook {

// Millimetres as a tape shows them: 5 ft is 1524 mm, 2 1/4 in 57, 3 1/2 in 89, 9 ft 2743.

std::string_view said(Task task, LengthUnit written) {
    if (written != LengthUnit::millimetres)
        return word(task);
    switch (task) {
    case Task::longSide:
        return "casing side over 1524 mm";
    case Task::smallCrown:
        return "crown to 57 mm";
    case Task::mediumCrown:
        return "crown to 89 mm";
    case Task::largeCrown:
        return "crown over 89 mm or built up";
    default:
        return word(task);
    }
}

std::string_view said(Condition condition, LengthUnit written) {
    if (written != LengthUnit::millimetres)
        return word(condition);
    switch (condition) {
    case Condition::nineFootCeiling:
        return "2.7 m ceiling";
    case Condition::tenFootCeiling:
        return "3 m ceiling";
    case Condition::overTwelveFootCeiling:
        return "ceiling over 3.7 m";
    default:
        return word(condition);
    }
}

std::string said(Conditions conditions, LengthUnit written) {
    std::string all;
    for (const auto& entry : Words<Condition>::list) {
        if (conditions.has(entry.value))
            all.append(all.empty() ? "" : ", ").append(said(entry.value, written));
    }
    return all;
}

namespace {

template <class E>
std::optional<E> meant(std::string_view text) {
    for (const auto& entry : Words<E>::list) {
        if (entry.text == text || said(entry.value, LengthUnit::millimetres) == text)
            return entry.value;
    }
    return std::nullopt;
}

} // namespace

std::optional<Task> taskSaid(std::string_view text) {
    return meant<Task>(text);
}

std::optional<Condition> conditionSaid(std::string_view text) {
    return meant<Condition>(text);
}

} // namespace miterbook
