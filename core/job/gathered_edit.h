// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <cstdint>
#include <map>
#include <string>
#include <utility>

namespace miterbook {

/// A gesture of several steps, each of which looks at what the ones before it made: they are tried
/// on a copy of the book and come out as one edit, so that nothing is done unless all of it can be.
class GatheredEdit {
public:
    explicit GatheredEdit(const Book& book)
        : m_book(book) {}

    /// The book as the steps so far leave it.
    const Book& book() const { return m_book; }
    /// Errors: what check() says of the step against that book; it is then left out.
    Result<void> add(const Edit& step);
    /// All steps as one edit; a row that several of them changed is changed once.
    Edit take(std::string sentence) &&;

private:
    using Key = std::pair<std::size_t, std::int64_t>; ///< kind and id

    Book m_book;
    std::map<Key, std::size_t> m_places; ///< in m_changes
    std::vector<Change> m_changes;
};

} // namespace miterbook
