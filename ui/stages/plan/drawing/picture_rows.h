// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/drawing/plan_picture.h"

namespace miterbook {

// Single rows as they are drawn.

PictureRoom pictureOfRoom(const Room& room, const Book& book);
/// In a wall of `room`.
PictureOpening pictureOfOpening(
    const Opening& opening, const Room& room, const WallPlace& place, const Book& book);
/// Nothing where it has no marks.
std::optional<PictureWork> pictureOfWork(const OtherWork& work);
/// Nothing where it has no place.
std::optional<PictureStair> pictureOfStair(const Stair& stair);

} // namespace miterbook
