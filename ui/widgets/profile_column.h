// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "widgets/columns.h"

#include <initializer_list>

namespace miterbook {

/// Names of the book's profiles of these uses (of all, when none is named), first `none`.
QStringList profileNames(
    const Book& book, std::initializer_list<ProfileUse> uses, const QString& none);
/// The profile of a name, or none for nothing or `none`. Errors: a sentence.
Result<Id<Profile>> chosenProfile(const Book& book, const QString& typed, const QString& none);
QString profileText(const Book& book, Id<Profile> id, const QString& none);

/// What is shown where no profile is named.
struct NoProfile {
    /// "as plan": the plan's own is used.
    static QString asPlan() { return QStringLiteral("as plan"); }
    /// Nothing: none is used.
    static QString unsaid() { return {}; }
};

/// A profile by name, chosen from those of some uses.
template <auto M, auto none, ProfileUse... uses>
constexpr Column<RowOf<M>> profileColumn(const char* title) {
    using Row = RowOf<M>;
    return {.title = title,
        .kind = CellKind::choice,
        .read = [](const Row& row, const Book& book) { return profileText(book, row.*M, none()); },
        .edit
        = [](Row& row, const QString& typed,
              const Book& book) { return putInto<M>(row, chosenProfile(book, typed, none())); },
        .choices
        = [](const Row&, const Book& book) { return profileNames(book, {uses...}, none()); }};
}

} // namespace miterbook
