// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/find.h"

namespace miterbook {

namespace {

/// "There is no plan "X". There are: A, B." or "... There are none."
Error noneNamed(
    std::string_view noun, const std::string& name, const std::vector<std::string>& all) {
    std::string sentence = "There is no " + std::string(noun) + " \"" + name
        + "\" in the book; there ";
    if (all.empty())
        return {Fault::notFound, sentence + "are none."};
    sentence += all.size() == 1 ? "is: " : "are: ";
    for (const std::string& each : all)
        sentence += each + (&each == &all.back() ? "." : ", ");
    return {Fault::notFound, sentence};
}

Result<Id<Variant>> findVariant(
    const Table<Variant>& variants, VariantKind kind, const std::string& name) {
    std::vector<std::string> names;
    for (const auto& [id, variant] : variants) {
        if (variant.kind != kind)
            continue;
        if (variant.name == name)
            return id;
        names.push_back(variant.name);
    }
    return noneNamed(word(kind), name, names);
}

} // namespace

std::string planTitle(const Book& book, const Plan& plan) {
    const Builder* builder = book.builderOf(plan);
    return builder ? builder->name + " / " + plan.name : plan.name;
}

Result<Id<Plan>> findPlan(const Book& book, const std::string& name) {
    std::vector<Id<Plan>> found;
    std::vector<std::string> titles;
    for (const auto& [id, plan] : book.jobs.of<Plan>()) {
        if (plan.house)
            continue;
        const std::string title = planTitle(book, plan);
        if (plan.name == name || title == name)
            found.push_back(id);
        titles.push_back(title);
    }
    if (found.size() == 1)
        return found.front();
    if (found.empty())
        return noneNamed("plan", name, titles);
    return badInput("More than one plan is called \"" + name
        + "\": say it with its builder, as \"Builder / " + name + "\".");
}

Result<Id<House>> findHouse(const Book& book, const std::string& name) {
    std::vector<std::string> names;
    for (const auto& [id, house] : book.jobs.of<House>()) {
        if (house.name == name)
            return id;
        names.push_back(house.name);
    }
    return noneNamed("house", name, names);
}

Result<Selection> findSelection(const Book& book, Id<Plan> plan, const std::string& elevation,
    const std::vector<std::string>& options) {
    const Table<Variant>& variants = book.sheet(plan).of<Variant>();
    Selection selection;
    if (!elevation.empty()) {
        const auto id = findVariant(variants, VariantKind::elevation, elevation);
        if (!id)
            return id.error();
        selection.elevation = *id;
    }
    for (const std::string& option : options) {
        const auto id = findVariant(variants, VariantKind::option, option);
        if (!id)
            return id.error();
        selection.options.push_back(*id);
    }
    return selection;
}

Result<Id<Level>> findLevel(const Book& book, Id<Plan> plan, const std::string& name) {
    std::vector<std::string> names;
    for (const auto& [id, level] : book.sheet(plan).of<Level>()) {
        if (level.name == name)
            return id;
        names.push_back(level.name);
    }
    return noneNamed("level", name, names);
}

} // namespace miterbook
