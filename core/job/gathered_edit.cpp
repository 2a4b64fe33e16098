// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/gathered_edit.h"

namespace miterbook {

Result<void> GatheredEdit::add(const Edit& step) {
    if (auto held = check(m_book, step); !held)
        return held;
    apply(m_book, step);
    for (const Change& change : step.changes) {
        const Key key{change.row().kind(), change.row().id()};
        const auto [place, isNew] = m_places.try_emplace(key, m_changes.size());
        if (isNew)
            m_changes.push_back(change);
        else
            m_changes[place->second].after = change.after;
    }
    return {};
}

Edit GatheredEdit::take(std::string sentence) && {
    Edit edit{std::move(sentence), {}};
    for (Change& change : m_changes) {
        if (change.before != change.after)
            edit.changes.push_back(std::move(change));
    }
    return edit;
}

} // namespace miterbook
