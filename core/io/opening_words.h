// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/opening.h"

#include <optional>
#include <string>
#include <string_view>

namespace miterbook {

/// What a door schedule's type says: "pr bi-fold" is a bifold door. Nothing for unknown words.
std::optional<OpeningKind> doorKind(std::string_view type);

/// "stool & apron", "3 sided"; nothing for unknown words.
std::optional<TrimStyle> trimStyle(std::string_view text);

/// "LH", "right hand reverse"; nothing for unknown words.
std::optional<Hand> handOf(std::string_view text);

/// "privacy", "entry set"; nothing for unknown words.
std::optional<Lockset> locksetOf(std::string_view text);

/// What a window's type says about its shape.
struct WindowShape {
    enum class Kind {
        rectangle,
        arch,      ///< its rise is said elsewhere
        halfRound, ///< the rise is half the width
        octagon,   ///< regular
        unknown,   ///< sides that no schedule tells: gable, trapezoid, round
    };
    Kind kind = Kind::rectangle;
    std::string_view word; ///< what was recognised
};
WindowShape windowShape(std::string_view type);

/// Joints between units set side by side: "twin" 1, "triple mull" 2, else 0.
int mullsOf(std::string_view type);

/// "2x4" and "2x6" as a wall's thickness with 1/2 in board on both sides: 4 9/16, 6 9/16 [common
/// practice]; nothing for other text.
std::optional<Length> framedWall(std::string_view text);

} // namespace miterbook
