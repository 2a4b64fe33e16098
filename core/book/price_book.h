// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/hours.h"
#include "basics/tables.h"
#include "book/builder.h"
#include "book/crew.h"
#include "book/labour.h"
#include "book/logo.h"
#include "book/part.h"
#include "book/practice.h"
#include "book/profile.h"
#include "book/shop.h"
#include "book/terms.h"

#include <vector>

namespace miterbook {

using PriceTables = Tables<Shop, Practice, Terms, Builder, Profile, Stick, StickPrice, Offcut, Part,
    Consumable, LabourRate, Factor, PiecePrice, CrewMember, Burden, HeaderName, Logo>;

/// What the shop knows: profiles and prices, labour rates, crew, builders, terms.
class PriceBook : public PriceTables {
public:
    // Out of line: copying all these rows is much code in each file.
    PriceBook();
    PriceBook(const PriceBook&);
    PriceBook(PriceBook&&) noexcept;
    PriceBook& operator=(const PriceBook&);
    PriceBook& operator=(PriceBook&&) noexcept;
    ~PriceBook();

    /// The one row of each; default values before the book has been set up.
    const Shop& shop() const;
    const Practice& practice() const;
    const Terms& terms() const;

    /// The day whose prices and burden are in force; no day: all that is known has begun. It is no
    /// row of the book: whoever opens the book says it.
    Date day() const { return m_day; }
    void setDay(Date day) { m_day = day; }

    const Profile* profile(Id<Profile> id) const { return of<Profile>().find(id); }
    /// The profile's name, or "no profile".
    std::string_view profileName(Id<Profile> id) const;
    /// Sticks of a profile, shortest first, with the prices in force.
    std::vector<Stick> sticksOf(Id<Profile> id) const;
    /// Those of them that the yard stocks.
    std::vector<Stick> stockedSticks(Id<Profile> id) const;
    /// What one of a stick costs, by the supplier's price in force.
    Money priceOf(const Stick& stick) const;
    std::vector<Offcut> offcuts(Id<Profile> id) const;

    /// The book's rate for a task; nullptr when it has none.
    const LabourRate* rate(Task task) const;
    const PiecePrice* piecePrice(Task task) const;
    const Part* part(PartUse use) const;
    /// The product of the factors of all conditions, 1.0 when there are none.
    double factor(Conditions conditions) const;

    /// The burden items in force: of those of one name the latest that have begun.
    std::vector<Burden> burdenInForce() const;

    /// What one crew hour costs with burden: the mean wage of the active crew x (1 + burden as a
    /// percentage) + yearly burden / hours a year, rounded to the cent. Zero without a crew.
    Money crewRate() const;

private:
    Date m_day = noDate;
};

} // namespace miterbook
