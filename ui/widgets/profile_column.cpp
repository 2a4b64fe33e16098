// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/profile_column.h"

#include <algorithm>

namespace miterbook {

QStringList profileNames(
    const Book& book, std::initializer_list<ProfileUse> uses, const QString& none) {
    QStringList names{none};
    for (const auto& [id, profile] : book.prices.of<Profile>()) {
        if (uses.size() == 0 || std::ranges::find(uses, profile.use) != uses.end())
            names.append(text(profile.name));
    }
    return names;
}

Result<Id<Profile>> chosenProfile(const Book& book, const QString& typed, const QString& none) {
    const QStringList names = profileNames(book, {}, none);
    const auto at = chosenOf(names, typed);
    if (!at && typed.trimmed().isEmpty())
        return Id<Profile>();
    if (!at)
        return badInput("The book has no profile \"" + utf8(typed.trimmed()) + "\".");
    if (*at == 0)
        return Id<Profile>();
    return std::next(book.prices.of<Profile>().begin(), *at - 1)->first;
}

QString profileText(const Book& book, Id<Profile> id, const QString& none) {
    return id ? text(book.prices.profileName(id)) : none;
}

} // namespace miterbook
