// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/alternates.h"

#include <algorithm>

namespace miterbook {

namespace {

/// The plan of a need: as it is in the figures where it is the same need, else made anew and kept.
class OptionPricer {
public:
    OptionPricer(const Book& book, Id<Plan> plan, const JobFigures& figures,
        const std::function<bool()>& stop)
        : m_prices(pricesFor(book, plan))
        , m_stop(stop) {
        const std::vector<StickNeed> needs = stickNeeds(figures.takeoff);
        for (std::size_t i = 0; i < needs.size() && i < figures.sticks.size(); ++i)
            m_memory.keep(stickQuestion(needs[i], m_prices), figures.sticks[i]);
    }

    StickPlan planFor(const StickNeed& need) {
        StickQuestion question = stickQuestion(need, m_prices);
        if (const StickPlan* known = m_memory.find(question))
            return *known;
        StickPlan plan = planSticks(need, m_prices, Effort::thorough, m_stop);
        m_memory.keep(std::move(question), plan);
        return plan;
    }

private:
    PriceBook m_prices;
    StickMemory m_memory;
    const std::function<bool()>& m_stop;
};

} // namespace

std::vector<Alternate> alternatesFor(const Book& book, Id<Plan> plan, const Selection& selection,
    const JobFigures& figures, const std::function<bool()>& stop) {
    std::vector<Alternate> alternates;
    const Plan* row = book.plan(plan);
    if (!row || row->house || !figures.setup.offerOptions)
        return alternates;
    OptionPricer pricer(book, plan, figures, stop);
    for (const auto& [id, variant] : book.sheet(plan).of<Variant>()) {
        const bool chosen = std::ranges::count(selection.options, id) > 0;
        if (variant.kind != VariantKind::option || chosen)
            continue;
        if (stop && stop())
            break;
        Selection with = selection;
        with.options.push_back(id);
        const JobFigures changed = figuresFor(
            book, plan, with, [&](const StickNeed& need) { return pricer.planFor(need); });
        alternates.push_back(
            {id, variant.name, changed.estimate.total.price - figures.estimate.total.price});
    }
    return alternates;
}

} // namespace miterbook
