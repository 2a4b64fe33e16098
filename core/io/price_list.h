// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// What a supplier's list does not say of every row.
struct PriceListAsk {
    std::string supplier;
    Date from = noDate;             ///< the day its prices begin
    PricePer per = PricePer::stick; ///< for what its prices are
};

/// One price of a list: what a stick of the book will cost from a day on.
struct ListedPrice {
    int line = 0; ///< in the file
    Id<Profile> profile;
    Length length;
    Id<Stick> stick;             ///< none: the book has no stick of this length yet
    StickPrice price;            ///< without id
    std::optional<Money> before; ///< what the stick costs on that day without the list

    bool operator==(const ListedPrice&) const = default;
};

/// A cell that keeps the list from being brought in, and why.
struct ListRejection {
    int line = 0;
    std::string column; ///< its title in the file
    std::string reason; ///< one sentence

    bool operator==(const ListRejection&) const = default;
};

/// What a supplier's list says, before anything is brought in.
struct PriceListReading {
    std::vector<ListedPrice> changes;    ///< in the file's order
    int unchanged = 0;                   ///< prices that the book has so already
    std::vector<ListRejection> rejected; ///< by line
    std::vector<std::string> unmapped;   ///< titles of columns that mean nothing to us

    /// "line 5, Price: "12,5x" is not a price."
    static std::string sentence(const ListRejection& rejection);
};

/// Reads a supplier's price list as CSV: a row of titles with columns for profile and price, and
/// perhaps length, per, from and supplier; `ask` says what it does not. A row without a length is a
/// price by the foot for every stick of its profile. Errors: no CSV, no column for profile or
/// price, no day.
Result<PriceListReading> readPriceList(
    std::string_view bytes, const PriceBook& prices, const PriceListAsk& ask);

/// The edit that brings a list in whole: "Bring in 12 prices of Tolliver Yard from list.csv".
/// Errors: the first row that was turned away; nothing in it that changes anything.
Result<Edit> priceListEdit(
    const Book& book, IdSource& ids, const PriceListReading& reading, const std::string& file);

} // namespace miterbook
