// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/name_index.h"
#include "job/any_row.h"
#include "plan/overlay.h"

#include <string>
#include <string_view>
#include <tuple>

namespace miterbook {

/// The key of the list in which rows of a kind stand in an exchange text.
template <class Row>
inline constexpr std::string_view listKey = "";
template <>
inline constexpr std::string_view listKey<Level> = "levels";
template <>
inline constexpr std::string_view listKey<Room> = "rooms";
template <>
inline constexpr std::string_view listKey<Opening> = "openings";
template <>
inline constexpr std::string_view listKey<Closet> = "closets";
template <>
inline constexpr std::string_view listKey<Stair> = "stairs";
template <>
inline constexpr std::string_view listKey<WallTreatment> = "wall_treatments";
template <>
inline constexpr std::string_view listKey<OtherWork> = "other_work";
template <>
inline constexpr std::string_view listKey<SheetFile> = "sheet_files";
template <>
inline constexpr std::string_view listKey<Underlay> = "underlays";
template <>
inline constexpr std::string_view listKey<Dismissal> = "dismissals";

/// Calls fn(RowKind<Row>) for each kind of row that variants change, in the order of the file: what
/// is referred to before what refers to it.
template <class Fn>
void forEachListedKind(Fn&& fn) {
    fn(RowKind<Level>());
    fn(RowKind<Room>());
    fn(RowKind<Opening>());
    fn(RowKind<Closet>());
    fn(RowKind<Stair>());
    fn(RowKind<WallTreatment>());
    fn(RowKind<OtherWork>());
}

/// The same for each kind of row that belongs to the plan alone.
template <class Fn>
void forEachPlainKind(Fn&& fn) {
    fn(RowKind<SheetFile>());
    fn(RowKind<Underlay>());
    fn(RowKind<Dismissal>());
}

/// Everything that an exchange text refers to by name.
class PlanRefs {
public:
    template <class Row>
    NameIndex& of() {
        return std::get<Index<Row>>(m_indexes).names;
    }
    template <class Row>
    const NameIndex& of() const {
        return std::get<Index<Row>>(m_indexes).names;
    }
    template <class Row>
    std::string textOf(Id<Row> id) const {
        return of<Row>().textOf(id.value());
    }

private:
    template <class Row>
    struct Index {
        NameIndex names;
    };
    std::tuple<Index<Profile>, Index<Level>, Index<Room>, Index<Opening>, Index<Closet>,
        Index<Stair>, Index<WallTreatment>, Index<OtherWork>, Index<SheetFile>, Index<Underlay>,
        Index<Dismissal>>
        m_indexes;
};

/// What a row may be referred to by: its name, else its mark. A row that changes another has the
/// other's names and is referred to by place only.
template <Overlaid Row>
std::vector<std::string> refNames(const Row& row) {
    std::vector<std::string> names;
    if (row.replaces)
        return names;
    if constexpr (requires { row.name; })
        names.push_back(row.name);
    if constexpr (requires { row.mark; })
        names.push_back(row.mark);
    return names;
}

} // namespace miterbook
