// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"
#include "packing/instance.h"

namespace miterbook::packing {

// Exchanges pieces between sticks: first so that free sticks are left whole where others have
// room, then to get along with fewer different patterns, then to gather what is left over into
// one long remainder. Costs never rise.
class Consolidation {
public:
    Consolidation(const Instance& instance, Packing packing, Budget& budget);
    Packing run();

private:
    using Line = std::pair<Column, std::int64_t>; // a column and how often
    using Lines = std::vector<Line>;

    bool spareFreeStick();
    bool movedAway(std::size_t from, Lines& lines) const;
    bool mergeOnce();
    bool mergePair(std::size_t a, std::size_t b);
    bool intoKnown(std::size_t a, std::size_t b, const Counts& both);
    bool intoTwins(std::size_t a, std::size_t b, const Counts& both);
    bool replace(std::size_t a, std::size_t b, const Counts& first, const Counts& second);
    Column column(std::size_t bin, const Counts& counts) const;
    bool fits(std::size_t bin, const Counts& counts) const;
    std::int64_t room(const Line& line) const;
    void gatherRemainder();
    std::int64_t emptied(std::size_t target, Lines& lines) const;
    bool moveOut(Column& from, Column& to, std::int64_t space) const;
    void change(Column& column, int kind, std::int64_t by) const;

    const Instance& m_instance;
    Packing m_packing;
    Budget& m_budget;
};

} // namespace miterbook::packing
