// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/find.h"
#include "batch/opened_book.h"

namespace miterbook {

namespace {

void declareList(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the book"));
}

void listVariants(const PlanRows& rows, VariantKind kind, Console& console) {
    for (const auto& [id, variant] : rows.of<Variant>()) {
        if (variant.kind == kind)
            console.out << "    " << word(kind) << ": " << variant.name << '\n';
    }
}

Result<void> listPlans(OpenedBook& opened, Console& console) {
    for (const auto& [id, plan] : opened.book().jobs.of<Plan>()) {
        if (plan.house)
            continue;
        if (const auto open = opened.workbook.openPlan(id); !open)
            return open;
        console.out << "  " << planTitle(opened.book(), plan) << '\n';
        listVariants(opened.book().sheet(id), VariantKind::elevation, console);
        listVariants(opened.book().sheet(id), VariantKind::option, console);
    }
    return {};
}

void listHouses(const Book& book, Console& console) {
    for (const auto& [id, house] : book.jobs.of<House>()) {
        const Plan* plan = book.plan(house.plan);
        console.out << "  " << house.name << " (" << word(house.stage) << ')';
        if (plan)
            console.out << ", " << planTitle(book, *plan);
        if (!house.lot.empty())
            console.out << ", lot " << house.lot;
        console.out << '\n';
    }
}

Result<void> runList(const QCommandLineParser& parser, Console& console) {
    const auto path = positional(parser, 0, "which book to list");
    if (!path)
        return path.error();
    if (const auto fewEnough = noMoreThan(parser, 1); !fewEnough)
        return fewEnough;
    auto opened = openWorkbook(*path, OpenMode::look);
    if (!opened)
        return opened.error();
    console.out << "Builders\n";
    for (const auto& [id, builder] : opened->book().prices.of<Builder>())
        console.out << "  " << builder.name << '\n';
    console.out << "Plans\n";
    if (const auto listed = listPlans(*opened, console); !listed)
        return listed;
    console.out << "Houses\n";
    listHouses(opened->book(), console);
    return {};
}

} // namespace

const Command listCommand{"list", "builders, plans and houses of a book", declareList, runList};

} // namespace miterbook
