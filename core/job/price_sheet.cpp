// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/price_sheet.h"

#include "book/stick_prices.h"

#include <algorithm>
#include <atomic>
#include <mutex>
#include <thread>

namespace miterbook {

namespace {

using PlanFor = std::function<StickPlan(const StickNeed&)>;

/// Prices one plan under one selection after another.
class Pricer {
public:
    Pricer(const Book& book, PlanPrices& prices, const PlanFor& planFor)
        : m_book(book)
        , m_prices(prices)
        , m_planFor(planFor) {}

    Money priceOf(Id<Variant> elevation, Id<Variant> option) const {
        Selection selection{elevation, {}};
        if (option)
            selection.options.push_back(option);
        const JobFigures figures = figuresFor(m_book, m_prices.plan, selection, m_planFor);
        for (const std::string& problem : figures.estimate.problems)
            noteProblem(problem);
        for (const StickPlan& sticks : figures.sticks)
            noteProblem(sticks.problem);
        return figures.estimate.total.price;
    }

private:
    void noteProblem(const std::string& problem) const {
        if (!problem.empty() && std::ranges::count(m_prices.problems, problem) == 0)
            m_prices.problems.push_back(problem);
    }

    const Book& m_book;
    PlanPrices& m_prices;
    const PlanFor& m_planFor;
};

/// The plan's variants of a kind in the order they were made.
std::vector<const Variant*> variantsOf(const Book& book, Id<Plan> plan, VariantKind kind) {
    std::vector<const Variant*> found;
    for (const auto& [id, variant] : book.sheet(plan).of<Variant>()) {
        if (variant.kind == kind)
            found.push_back(&variant);
    }
    return found;
}

/// Stick questions that no memory answers, each once.
struct OpenQuestions {
    std::vector<StickQuestion> questions;
    std::vector<StickNeed> needs; ///< of the same places
};

/// Asks for every price once without cutting a stick: a hundredth of the time that cutting takes.
OpenQuestions openQuestions(const Book& book, const std::vector<Id<Plan>>& plans,
    const PriceBook& prices, const StickMemory& memory) {
    OpenQuestions open;
    const auto note = [&](const StickNeed& need) {
        StickQuestion question = stickQuestion(need, prices);
        if (const StickPlan* known = memory.find(question))
            return *known;
        if (std::ranges::find(open.questions, question) == open.questions.end()) {
            open.questions.push_back(std::move(question));
            open.needs.push_back(need);
        }
        StickPlan none;
        none.profile = need.profile;
        return none;
    };
    for (const Id<Plan> plan : plans)
        (void)planPrices(book, plan, note);
    return open;
}

/// The plan of each need, found on as many threads as there are processors. What comes out does not
/// depend on them: a plan is made by an amount of work, not by the clock.
std::vector<StickPlan> answered(const std::vector<StickNeed>& needs, const PriceBook& prices,
    Effort effort, const std::function<bool()>& stop, const std::function<void(int, int)>& step) {
    std::vector<StickPlan> plans(needs.size());
    std::atomic<std::size_t> next = 0;
    std::mutex telling;
    int done = 0;
    const auto some = [&] {
        for (std::size_t i = next++; i < needs.size() && !(stop && stop()); i = next++) {
            plans[i] = planSticks(needs[i], prices, effort, stop);
            const std::lock_guard lock(telling);
            if (step)
                step(++done, static_cast<int>(needs.size()));
        }
    };
    const std::size_t processors = std::max(1U, std::thread::hardware_concurrency());
    std::vector<std::jthread> others;
    for (std::size_t n = 1; n < std::min(processors, needs.size()); ++n)
        others.emplace_back(some);
    some();
    others.clear(); // waits for them
    return plans;
}

} // namespace

PlanPrices planPrices(const Book& book, Id<Plan> plan, const PlanFor& planFor) {
    PlanPrices prices;
    const Plan* row = book.plan(plan);
    if (!row)
        return prices;
    prices.plan = plan;
    prices.name = row->name;
    prices.floorArea = row->floorArea;
    const Pricer pricer(book, prices, planFor);
    prices.columns.push_back({{}, "As drawn", pricer.priceOf({}, {})});
    for (const Variant* elevation : variantsOf(book, plan, VariantKind::elevation))
        prices.columns.push_back(
            {elevation->id, elevation->name, pricer.priceOf(elevation->id, {})});
    for (const Variant* option : variantsOf(book, plan, VariantKind::option)) {
        PlanPrices::Option line{option->id, option->name, {}};
        for (const PlanPrices::Column& column : prices.columns)
            line.changes.push_back(pricer.priceOf(column.elevation, option->id) - column.price);
        prices.options.push_back(std::move(line));
    }
    return prices;
}

std::vector<Id<Plan>> plansOf(const Book& book, Id<PlanSet> set) {
    std::vector<const Plan*> plans;
    for (const auto& [id, plan] : book.jobs.of<Plan>()) {
        if (plan.set == set && !plan.house)
            plans.push_back(&plan);
    }
    std::ranges::stable_sort(plans, {}, &Plan::name);
    std::vector<Id<Plan>> ids;
    for (const Plan* plan : plans)
        ids.push_back(plan->id);
    return ids;
}

std::vector<PlanPrices> priceSheet(const Book& book, Id<PlanSet> set, StickMemory& memory,
    Effort effort, const std::function<bool()>& stop, const std::function<void(int, int)>& step) {
    const PriceBook today = pricesInForce(book.prices);
    std::vector<Id<Plan>> plans = plansOf(book, set);
    std::erase_if(plans, [&](Id<Plan> plan) { return !book.isOpen(plan); });
    const OpenQuestions open = openQuestions(book, plans, today, memory);
    const std::vector<StickPlan> answers = answered(open.needs, today, effort, stop, step);
    if (stop && stop())
        return {};
    const auto planFor = [&](const StickNeed& need) {
        const StickQuestion question = stickQuestion(need, today);
        if (const StickPlan* known = memory.find(question))
            return *known;
        const auto place = std::ranges::find(open.questions, question) - open.questions.begin();
        return answers[static_cast<std::size_t>(place)];
    };
    std::vector<PlanPrices> sheet;
    for (const Id<Plan> plan : plans)
        sheet.push_back(planPrices(book, plan, planFor));
    for (std::size_t i = 0; i < answers.size(); ++i)
        memory.keep(open.questions[i], answers[i]);
    return sheet;
}

std::optional<Money> lotPrice(const PlanPrices& prices, const Selection& selection) {
    const auto column = std::ranges::find(
        prices.columns, selection.elevation, &PlanPrices::Column::elevation);
    if (column == prices.columns.end())
        return std::nullopt;
    Money price = column->price;
    for (const Id<Variant> id : selection.options) {
        const auto option = std::ranges::find(prices.options, id, &PlanPrices::Option::option);
        if (option == prices.options.end())
            return std::nullopt;
        price += option->changes[static_cast<std::size_t>(column - prices.columns.begin())];
    }
    return price;
}

} // namespace miterbook
