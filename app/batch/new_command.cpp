// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"
#include "batch/commands.h"
#include "batch/opened_book.h"

namespace miterbook {

namespace {

void declareNew(QCommandLineParser& parser) {
    parser.addPositionalArgument(QStringLiteral("BOOK"), QStringLiteral("the file to make"));
    addValue(parser, "shop", "NAME", "the shop's name, as it stands at the head of papers");
}

Result<void> nameShop(OpenedBook& opened, const std::string& name) {
    Shop shop = opened.book().prices.shop();
    shop.name = name;
    return opened.perform(putEdit(opened.book(), "Name the shop", shop));
}

Result<void> runNew(const QCommandLineParser& parser, Console& console) {
    const auto path = positional(parser, 0, "which file to make");
    if (!path)
        return path.error();
    if (const auto fewEnough = noMoreThan(parser, 1); !fewEnough)
        return fewEnough;
    auto opened = createWorkbook(*path);
    if (!opened)
        return opened.error();
    if (isSet(parser, "shop")) {
        if (const auto named = nameShop(*opened, value(parser, "shop")); !named)
            return named;
    }
    console.out << *path << ": a new book with starter values; check them against your own.\n";
    return {};
}

} // namespace

const Command newCommand{"new", "make a book with the starter values", declareNew, runNew};

} // namespace miterbook
