// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/plan_names.h"

#include "io/decoded_text.h"

namespace miterbook {

namespace {

/// The only base row that `matches`; nullptr when there is none, or more than one.
template <class Row, class Fn>
const Row* onlyOne(const Table<Row>& table, Fn&& matches) {
    const Row* found = nullptr;
    for (const auto& [id, row] : table) {
        if constexpr (requires { row.variant; }) {
            if (row.variant)
                continue;
        }
        if (!matches(row))
            continue;
        if (found)
            return nullptr;
        found = &row;
    }
    return found;
}

} // namespace

const Level* PlanNames::level(std::string_view name) const {
    const std::string wanted = foldedText(name);
    return onlyOne(
        m_rows.of<Level>(), [&](const Level& l) { return foldedText(l.name) == wanted; });
}

const Room* PlanNames::room(std::string_view name) const {
    const std::string wanted = foldedText(name);
    const auto& rooms = m_rows.of<Room>();
    const auto byMark = [&](const Room& room) { return foldedText(room.mark) == wanted; };
    const auto byName = [&](const Room& room) { return foldedText(room.name) == wanted; };
    const auto byBoth = [&](const Room& room) {
        return foldedText(room.mark + " " + room.name) == wanted
            || foldedText(room.name + " " + room.mark) == wanted;
    };
    if (const Room* found = onlyOne(rooms, byMark))
        return found;
    if (const Room* found = onlyOne(rooms, byName))
        return found;
    return onlyOne(rooms, byBoth);
}

const Profile* PlanNames::profile(std::string_view name, ProfileUse use) const {
    const std::string wanted = foldedText(name);
    if (wanted.empty())
        return nullptr;
    const auto& profiles = m_book.prices.of<Profile>();
    const auto exact = [&](const Profile& p) { return foldedText(p.name) == wanted; };
    const auto within = [&](const Profile& p) {
        return p.use == use && foldedText(p.name).find(wanted) != std::string::npos;
    };
    if (const Profile* found = onlyOne(profiles, exact))
        return found;
    return onlyOne(profiles, within);
}

Id<Profile> PlanNames::onlyProfile(ProfileUse use) const {
    const Profile* found = onlyOne(
        m_book.prices.of<Profile>(), [&](const Profile& p) { return p.use == use; });
    return found ? found->id : Id<Profile>();
}

} // namespace miterbook
