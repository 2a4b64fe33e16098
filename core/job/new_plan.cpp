// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/new_plan.h"

namespace miterbook {

namespace {

/// The book's first painted profile of a use, else its first one; none when it has none.
Id<Profile> usualProfile(const PriceBook& prices, ProfileUse use) {
    Id<Profile> any;
    for (const auto& [id, profile] : prices.of<Profile>()) {
        if (profile.use != use)
            continue;
        if (profile.finish == Finish::paint)
            return id;
        if (!any)
            any = id;
    }
    return any;
}

void setUsualProfiles(Plan& plan, const PriceBook& prices) {
    plan.windowCasing = usualProfile(prices, ProfileUse::casing);
    plan.doorCasing = plan.windowCasing;
    plan.stool = usualProfile(prices, ProfileUse::stool);
    plan.jamb = usualProfile(prices, ProfileUse::jamb);
    plan.base = usualProfile(prices, ProfileUse::base);
    plan.shoe = usualProfile(prices, ProfileUse::shoe);
    plan.crown = usualProfile(prices, ProfileUse::crown);
}

Builder builderOf(const Book& book, IdSource& ids, const std::string& name) {
    for (const auto& [id, builder] : book.prices.of<Builder>()) {
        if (builder.name == name)
            return builder;
    }
    Builder builder;
    builder.id = ids.next<Builder>();
    builder.name = name;
    return builder;
}

PlanSet setOf(const Book& book, IdSource& ids, Id<Builder> builder, const std::string& name) {
    for (const auto& [id, set] : book.jobs.of<PlanSet>()) {
        if (set.builder == builder && (name.empty() || set.name == name))
            return set;
    }
    PlanSet set;
    set.id = ids.next<PlanSet>();
    set.builder = builder;
    set.name = name.empty() ? "Plans" : name;
    return set;
}

bool isTaken(const Book& book, Id<PlanSet> set, const std::string& name) {
    for (const auto& [id, plan] : book.jobs.of<Plan>()) {
        if (!plan.house && plan.set == set && plan.name == name)
            return true;
    }
    return false;
}

Level firstLevel(IdSource& ids, Id<Plan> plan) {
    Level level;
    level.id = ids.next<Level>();
    level.plan = plan;
    level.position = 1;
    level.name = "Main level";
    return level;
}

} // namespace

Result<Edit> newPlan(const Book& book, IdSource& ids, const NewPlan& wanted) {
    if (wanted.builder.empty())
        return badInput("A plan needs its builder's name.");
    if (wanted.name.empty())
        return badInput("The plan has no name.");
    const Builder builder = builderOf(book, ids, wanted.builder);
    const PlanSet set = setOf(book, ids, builder.id, wanted.set);
    if (isTaken(book, set.id, wanted.name))
        return badInput("There is already a plan \"" + wanted.name + "\" in that plan set.");
    Plan plan;
    plan.id = ids.next<Plan>();
    plan.set = set.id;
    plan.name = wanted.name;
    plan.floorArea = wanted.floorArea;
    setUsualProfiles(plan, book.prices);
    return EditBuilder(book, "Begin plan " + wanted.name)
        .put(builder)
        .put(set)
        .put(plan)
        .put(firstLevel(ids, plan.id))
        .take();
}

Id<Plan> planOfBuilder(const Book& book, std::string_view builder, std::string_view plan) {
    for (const auto& [id, row] : book.jobs.of<Plan>()) {
        const Builder* owner = book.builderOf(row);
        if (!row.house && row.name == plan && owner && owner->name == builder)
            return id;
    }
    return {};
}

} // namespace miterbook
