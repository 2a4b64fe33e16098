// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/room_words.h"

#include "basics/digits.h"
#include "io/decoded_text.h"

#include <algorithm>
#include <array>

namespace miterbook {

namespace {

struct UseWord {
    std::string_view text;
    RoomUse use;
};

// The stronger word first: "bath closet" is a closet, "hall bath" a bath.
constexpr std::array useWords{
    UseWord{"closet", RoomUse::closet},
    UseWord{"wic", RoomUse::closet},
    UseWord{"linen", RoomUse::closet},
    UseWord{"pantry", RoomUse::pantry},
    UseWord{"bath", RoomUse::bath},
    UseWord{"powder", RoomUse::bath},
    UseWord{"toilet", RoomUse::bath},
    UseWord{"laundry", RoomUse::laundry},
    UseWord{"utility", RoomUse::laundry},
    UseWord{"kitchen", RoomUse::kitchen},
    UseWord{"stair", RoomUse::stair},
    UseWord{"garage", RoomUse::garage},
    UseWord{"hall", RoomUse::hall},
    UseWord{"foyer", RoomUse::hall},
    UseWord{"entry", RoomUse::hall},
    UseWord{"landing", RoomUse::hall},
};

bool holds(const std::string& text, std::string_view words) {
    return text.find(words) != std::string::npos;
}

/// The first whole number in the text; 0 when there is none or it is absurd.
int firstNumber(std::string_view text) {
    int number = 0;
    for (auto it = std::ranges::find_if(text, isDigit); it != text.end() && isDigit(*it); ++it) {
        number = number * 10 + (*it - '0');
        if (number > 20)
            return 0;
    }
    return number;
}

} // namespace

RoomUse useFromName(std::string_view name) {
    const std::string text = foldedText(name);
    for (const UseWord& each : useWords) {
        if (holds(text, each.text))
            return each.use;
    }
    return RoomUse::room;
}

bool saysNoTrim(std::string_view text) {
    static constexpr std::array words{"none", "tile", "vinyl", "rubber", "by others", "no base",
        "no shoe", "no crown", "cove tile"};
    const std::string folded = foldedText(text);
    return std::ranges::find(words, folded) != words.end();
}

bool saysAsPlan(std::string_view text) {
    static constexpr std::array words{
        "as plan", "per plan", "typical", "typ", "typ.", "std", "standard"};
    const std::string folded = foldedText(text);
    return std::ranges::find(words, folded) != words.end();
}

std::optional<ClosetWords> closetWords(std::string_view text) {
    const std::string folded = foldedText(text);
    const bool rod = holds(folded, "rod") || holds(folded, "r&s") || holds(folded, "s&r")
        || holds(folded, "hang");
    if (rod && (holds(folded, "double") || holds(folded, "dbl") || holds(folded, "two")))
        return ClosetWords{ClosetKind::doubleRod, 1};
    if (rod)
        return ClosetWords{ClosetKind::shelfAndRod, 1};
    if (holds(folded, "shelv") || holds(folded, "shelf") || holds(folded, "linen")
        || holds(folded, "pantry"))
        return ClosetWords{ClosetKind::shelves, firstNumber(folded)};
    return std::nullopt;
}

} // namespace miterbook
