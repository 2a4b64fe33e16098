// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/bills.h"
#include "papers/job_papers.h"

namespace miterbook {

/// The job that a paper about a house is for: facts of a heading take it.
PaperJob houseJob(const Book& book, Id<House> house, Date date);

/// Whom a paper about money goes to: name, person and address, as the builder stands in the book.
void addAddressee(Paper& paper, const Book& book, Id<Builder> builder);

/// House, community, lot and address, each where it is known.
void addHouse(Paper& paper, const PaperJob& job);

/// The row of a table of words and money: "Retainage held, 10 %" and an amount.
PaperTable::Row moneyRow(const std::string& what, Money money, const Book& book,
    PaperTable::Kind kind = PaperTable::Kind::plain);

} // namespace miterbook
