// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/starter_book.h"

#include "book/starter_crew.h"
#include "book/starter_goods.h"
#include "book/starter_labour.h"
#include "book/starter_profiles.h"

namespace miterbook {

namespace {

/// The rows of which a book has one; their id is 1.
void addOnlyRows(PriceBook& book) {
    Shop shop;
    shop.id = Id<Shop>(1);
    book.of<Shop>().put(std::move(shop));
    Practice practice;
    practice.id = Id<Practice>(1);
    book.of<Practice>().put(practice);
    Terms terms;
    terms.id = Id<Terms>(1);
    book.of<Terms>().put(std::move(terms));
}

} // namespace

PriceBook starterBook(IdSource& ids) {
    PriceBook book;
    ids.skipTo(1);
    addOnlyRows(book);
    addStarterProfiles(book, ids);
    addStarterLabour(book, ids);
    addStarterGoods(book, ids);
    addStarterCrew(book, ids);
    return book;
}

} // namespace miterbook
