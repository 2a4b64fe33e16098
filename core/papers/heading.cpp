// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/heading.h"

#include "basics/sha256.h"
#include "papers/plain_text.h"

#include <algorithm>

namespace miterbook {

namespace {

const House* houseOf(const PaperJob& job) {
    return job.book.house(job.house);
}

/// The plan that the elevation and options belong to.
Id<Plan> plannedAs(const PaperJob& job) {
    const House* house = houseOf(job);
    return house ? house->plan : job.plan;
}

Selection chosen(const PaperJob& job) {
    const House* house = houseOf(job);
    return house ? Selection{house->elevation, house->options} : job.selection;
}

std::string planName(const PaperJob& job, Id<Plan> id) {
    const Plan* plan = job.book.plan(id);
    return plan ? plan->name : std::string();
}

std::string variantName(const PaperJob& job, Id<Variant> id) {
    if (!id)
        return {};
    const Variant* variant = job.book.sheet(plannedAs(job)).of<Variant>().find(id);
    return variant ? variant->name : "no longer in the plan";
}

/// A bare number says nothing on a letterhead; a shop that writes more is taken at its word.
std::string licenceLine(const std::string& licence) {
    const std::string text = oneLine(licence);
    const bool bare = !text.empty() && text.front() >= '0' && text.front() <= '9';
    return bare ? "License no. " + text : text;
}

std::vector<std::string> letterhead(const Shop& shop) {
    std::vector<std::string> lines{oneLine(shop.name)};
    const std::string address = joined(typedLines(shop.address));
    const std::string reach = joined({oneLine(shop.phone), oneLine(shop.email)}, "  ·  ");
    for (const std::string& line : {address, reach, licenceLine(shop.licence)}) {
        if (!line.empty())
            lines.push_back(line);
    }
    return lines;
}

} // namespace

Paper beginPaper(std::string name, std::string title, const PaperJob& job) {
    Paper paper;
    paper.name = std::move(name);
    paper.title = std::move(title);
    paper.letterhead = letterhead(job.book.prices.shop());
    if (const Logo* logo = job.book.prices.of<Logo>().find(job.book.prices.shop().logo))
        paper.logo = logoOf(job.book.prices, logo->sum);
    const House* house = houseOf(job);
    paper.footer = joined({paper.title, house ? oneLine(house->name) : std::string(),
                              oneLine(planName(job, plannedAs(job))),
                              formatDate(job.date, job.book.prices.shop().monthFirst)},
        "  ·  ");
    return paper;
}

PaperLogo logoOf(const PriceBook& prices, std::string_view sum) {
    PaperLogo logo{std::string(sum), {}};
    for (const auto& [id, kept] : prices.of<Logo>()) {
        if (!sum.empty() && kept.sum == sum && sha256(kept.content.content()) == sum)
            logo.content = kept.content;
    }
    return logo;
}

void addFact(Paper& paper, std::string what, const std::string& text) {
    if (std::string line = oneLine(text); !line.empty())
        paper.facts.emplace_back(std::move(what), std::move(line));
}

void addBuilder(Paper& paper, const PaperJob& job, bool person) {
    const Plan* plan = job.book.plan(job.plan);
    const Builder* builder = plan ? job.book.builderOf(*plan) : nullptr;
    if (!builder)
        return;
    addFact(paper, "Builder", builder->name);
    if (person) {
        addFact(paper, "Attention", builder->contact);
        addFact(paper, "Builder's address", joined(typedLines(builder->address)));
    }
}

void addPlan(Paper& paper, const PaperJob& job) {
    if (const House* house = houseOf(job))
        addFact(paper, "House", house->name);
    addFact(paper, "Plan", planName(job, plannedAs(job)));
    if (!variantsAreKnown(job))
        return;
    const Selection selection = chosen(job);
    addFact(paper, "Elevation", variantName(job, selection.elevation));
    std::vector<std::string> options;
    for (const Id<Variant> option : selection.options)
        options.push_back(oneLine(variantName(job, option)));
    addFact(paper, options.size() == 1 ? "Option" : "Options", joined(options));
}

void addPlace(Paper& paper, const PaperJob& job, std::string address) {
    const Plan* plan = job.book.plan(job.plan);
    if (const PlanSet* set = plan ? job.book.jobs.of<PlanSet>().find(plan->set) : nullptr)
        addFact(paper, "Community", set->community);
    if (const House* house = houseOf(job)) {
        addFact(paper, "Lot", house->lot);
        addFact(paper, std::move(address), joined(typedLines(house->address)));
    }
}

void addDate(Paper& paper, const PaperJob& job, std::string what, Date date) {
    addFact(paper, std::move(what), formatDate(date, job.book.prices.shop().monthFirst));
}

bool variantsAreKnown(const PaperJob& job) {
    const Selection selection = chosen(job);
    const bool any = selection.elevation || !selection.options.empty();
    return !any || job.book.isOpen(plannedAs(job));
}

void addSection(
    Paper& paper, std::string heading, Paragraph::Style style, std::vector<std::string> lines) {
    if (lines.empty())
        return;
    paper.blocks.emplace_back(Paragraph{Paragraph::Style::heading, {std::move(heading)}});
    paper.blocks.emplace_back(Paragraph{style, std::move(lines)});
}

} // namespace miterbook
