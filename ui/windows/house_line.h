// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/house.h"
#include "widgets/column.h"
#include "windows/house_figures.h"

#include <span>

namespace miterbook {

/// One house in the list, with its figures once they are known.
struct HouseLine {
    House house;
    std::optional<HouseFigure> figure;
    Hours used;

    /// Whether its hours say anything yet.
    bool hasHours() const { return used > Hours() && figure; }

    bool operator==(const HouseLine&) const = default;
};

std::span<const Column<HouseLine>> houseColumns();

} // namespace miterbook
