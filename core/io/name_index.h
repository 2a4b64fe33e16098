// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/id.h"
#include "basics/result.h"

#include <map>
#include <set>
#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// What the rows of one kind are called in an exchange text: by mark or name where only one row has
/// it, else by place: "#3" is the third of its kind in the file.
class NameIndex {
public:
    /// Adds the next row of the file. Empty names are no names.
    void add(std::int64_t id, const std::vector<std::string>& names);

    /// A name of a row that is not in the file.
    void addOutside(std::int64_t id, const std::string& name);

    /// How a row is referred to; empty for one that has not been added.
    std::string textOf(std::int64_t id) const;
    /// The row of a name or place. Errors: Fault::notFound when there is none, Fault::badInput when
    /// there are several.
    Result<std::int64_t> find(std::string_view text) const;

private:
    Result<std::int64_t> findPlace(std::string_view text) const;

    struct Entry {
        std::int64_t id = 0;
        std::vector<std::string> names;
    };
    std::vector<Entry> m_entries;
    std::map<std::int64_t, std::size_t> m_placeOf;
    std::map<std::string, std::set<std::int64_t>, std::less<>> m_named;
};

} // namespace miterbook
