// SPDX-License-Identifier: GPL-3.0-or-later
#include "io/name_index.h"

#include <charconv>

namespace miterbook {

void NameIndex::add(std::int64_t id, const std::vector<std::string>& names) {
    m_placeOf.try_emplace(id, m_entries.size());
    m_entries.push_back({id, names});
    for (const std::string& name : names) {
        if (!name.empty())
            m_named[name].insert(id);
    }
}

void NameIndex::addOutside(std::int64_t id, const std::string& name) {
    if (!name.empty())
        m_named[name].insert(id);
}

std::string NameIndex::textOf(std::int64_t id) const {
    const auto place = m_placeOf.find(id);
    if (place == m_placeOf.end())
        return {};
    for (const std::string& name : m_entries[place->second].names) {
        if (!name.empty() && name.front() != '#' && m_named.at(name).size() == 1)
            return name;
    }
    return "#" + std::to_string(place->second + 1);
}

Result<std::int64_t> NameIndex::find(std::string_view text) const {
    if (text.starts_with('#'))
        return findPlace(text);
    const auto it = m_named.find(text);
    if (it == m_named.end())
        return Error{Fault::notFound, "there is none called \"" + std::string(text) + "\"."};
    if (it->second.size() > 1)
        return badInput("several are called \"" + std::string(text)
            + "\"; say which by its place in the file, as #3.");
    return *it->second.begin();
}

Result<std::int64_t> NameIndex::findPlace(std::string_view text) const {
    std::size_t place = 0;
    const char* end = text.data() + text.size();
    const auto [stop, failure] = std::from_chars(text.data() + 1, end, place);
    if (failure != std::errc() || stop != end || place == 0 || place > m_entries.size())
        return Error{Fault::notFound, "there is no \"" + std::string(text) + "\" in the file."};
    return m_entries[place - 1].id;
}

} // namespace miterbook
