// SPDX-License-Identifier: GPL-3.0-or-later
#include "papers/bill_facts.h"

#include "papers/cells.h"
#include "papers/heading.h"
#include "papers/plain_text.h"

namespace miterbook {

PaperJob houseJob(const Book& book, Id<House> id, Date date) {
    const House* house = book.house(id);
    return {book, house ? house->work : Id<Plan>(), id, {}, date};
}

void addAddressee(Paper& paper, const Book& book, Id<Builder> id) {
    const Builder* builder = book.prices.of<Builder>().find(id);
    if (!builder)
        return;
    addFact(paper, "Builder", builder->name);
    addFact(paper, "Attention", builder->contact);
    addFact(paper, "Builder's address", joined(typedLines(builder->address)));
}

void addHouse(Paper& paper, const PaperJob& job) {
    if (const House* house = job.book.house(job.house))
        addFact(paper, "House", house->name);
    addPlace(paper, job, "Address");
}

PaperTable::Row moneyRow(
    const std::string& what, Money money, const Book& book, PaperTable::Kind kind) {
    return {kind, {Cell::of(oneLine(what)), moneyCell(money, book.prices.shop().currency)}};
}

} // namespace miterbook
