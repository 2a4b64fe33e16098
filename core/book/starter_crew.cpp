// SPDX-License-Identifier: GPL-3.0-or-later
#include "book/starter_crew.h"

namespace miterbook {

namespace {

struct BurdenEntry {
    const char* name;
    int basisPoints; ///< of wages
    int dollarsPerYear;
    int year;
    const char* source;
};

/// FICA: 6.2 % to the wage base ($176,100 in 2025) and 1.45 %. FUTA: 0.6 % net of the first $7,000.
/// The others differ by state and by the shop's own policies.
constexpr BurdenEntry burdens[] = {
    {"FICA, employer's share", 765, 0, 2025, "6.2 % + 1.45 %, 2025"},
    {"FUTA", 0, 42, 2025, "0.6 % net of the first $7,000, 2025"},
    {"State unemployment", 270, 0, 0, "starter: take yours from your state's notice"},
    {"Workers' compensation", 950, 0, 0, "starter: take yours from your policy"},
    {"General liability", 300, 0, 0, "starter: take yours from your policy"},
};

} // namespace

void addStarterCrew(PriceBook& book, IdSource& ids) {
    auto& crew = book.of<CrewMember>();
    crew.put({ids.next<CrewMember>(), "Del Harnsworth", Money::dollars(36), true});
    crew.put({ids.next<CrewMember>(), "Ina Pruett", Money::dollars(28), true});
    for (const BurdenEntry& entry : burdens)
        book.of<Burden>().put(
            {ids.next<Burden>(), entry.name, Percent::basisPoints(entry.basisPoints),
                Money::dollars(entry.dollarsPerYear), entry.year, Origin::starter, entry.source});
}

} // namespace miterbook
