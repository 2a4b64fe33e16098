// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "packing/budget.h"
#include "packing/instance.h"

#include <functional>
#include <optional>

namespace miterbook::packing {

// What is still to be cut and what is left to cut it from.
struct Remaining {
    explicit Remaining(const Instance& instance);
    Counts demand;
    Counts available; // per bin
    // How often this column can be taken without cutting more than is wanted.
    std::int64_t repeats(const Column& column) const;
    void take(const Column& column, std::int64_t times);
};

// Proposes for each bin what to cut from one stick now; an empty column: nothing.
class Filler {
public:
    virtual ~Filler() = default;
    // Called before asking, whenever the demand has changed.
    virtual bool prepare(const Remaining& remaining) = 0;
    virtual Column fill(std::size_t bin) = 0;
};

// Stick after stick, the bin whose filling costs least per width, each column as often as it
// can be repeated. What is left when the budget ends or no stick fits is missing.
Packing fillGreedily(const Instance& instance, Remaining remaining, Filler& filler);

// The largest piece that still fits, again and again. One for each filling.
class LargestFirst : public Filler {
public:
    explicit LargestFirst(const Instance& instance)
        : m_instance(instance)
        , m_next(instance.kinds(), 0) {}
    bool prepare(const Remaining& remaining) override;
    Column fill(std::size_t bin) override;

private:
    std::size_t wanted(std::size_t kind); // the first from here on that is still wanted

    const Instance& m_instance;
    const Remaining* m_remaining = nullptr;
    std::vector<std::size_t> m_next; // per kind, where to look on when it is used up
};

} // namespace miterbook::packing
