// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <string>
#include <vector>

namespace miterbook {

/// Something that a builder's plan says otherwise than when a house was started from it.
struct PlanRevision {
    enum class Kind { added, changed, removed };
    struct Difference {
        std::string field; ///< "wall thickness"
        std::string house; ///< as the house has it
        std::string plan;  ///< as the plan now has it

        bool operator==(const Difference&) const = default;
    };
    Kind kind = Kind::changed;
    std::string table;       ///< of what kind it is: "opening"
    std::int64_t own = 0;    ///< id of the house's row; 0 where it is added
    std::int64_t source = 0; ///< id of the plan's row
    std::string what;        ///< "opening "W4""
    std::vector<Difference> differences;

    bool operator==(const PlanRevision&) const = default;
};

/// "opening "W4": width 36" in the house, 40" in the plan".
std::string sentenceOf(const PlanRevision& revision);

/// What the builder's plan, with the elevation and options the house was started with, now says
/// otherwise: levels, rooms, openings and so on that were added, changed or taken away since the
/// house took them over or last chose to keep its own. Both plans must be open; else nothing. A
/// house without ties, started before they were kept, is compared row by row of the same name.
std::vector<PlanRevision> revisionsFor(const Book& book, Id<House> house);

/// Makes the house as the plan is in what was chosen; in the rest the house keeps its own and is
/// not asked again until the plan changes again. `taken` and `kept` are of revisionsFor(). Measures
/// of openings that go are removed with them.
Edit revisionEdit(const Book& book, IdSource& ids, Id<House> house,
    const std::vector<PlanRevision>& taken, const std::vector<PlanRevision>& kept);

} // namespace miterbook
