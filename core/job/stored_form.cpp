// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/stored_form.h"

namespace miterbook {

std::string TextForm<Conditions>::write(Conditions conditions) {
    std::string text;
    for (const auto& each : Words<Condition>::list) {
        if (conditions.has(each.value))
            text += (text.empty() ? "" : ", ") + std::string(each.text);
    }
    return text;
}

std::optional<Conditions> TextForm<Conditions>::read(std::string_view text) {
    Conditions conditions;
    while (!text.empty()) {
        const std::size_t comma = text.find(", ");
        const auto condition = fromWord<Condition>(text.substr(0, comma));
        if (!condition)
            return std::nullopt;
        conditions.add(*condition);
        text = comma == std::string_view::npos ? std::string_view() : text.substr(comma + 2);
    }
    return conditions;
}

} // namespace miterbook
