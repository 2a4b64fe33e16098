// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan_rows.h"

#include <map>
#include <string>
#include <type_traits>
#include <vector>

namespace miterbook {

/// Which profile takes the place of which, with all chosen variants together.
class ProfileSwaps {
public:
    /// Swaps of one variant happen at once, those of several one after the other: A for B, then B
    /// for C leaves C for A. Where two variants swap the same profile the later wins with a remark.
    ProfileSwaps(const Table<Swap>& swaps, const std::vector<const Variant*>& chosen,
        std::vector<std::string>& remarks);

    Id<Profile> operator()(Id<Profile> profile) const;

    /// Swaps every profile that a row names.
    template <Described Row>
    void apply(Row& row) const {
        if (m_to.empty())
            return;
        forEachField<Row>([&](const auto& each) {
            if constexpr (std::is_same_v<decltype(each.member), Id<Profile> Row::*>)
                row.*each.member = (*this)(row.*each.member);
        });
    }

private:
    void take(const Table<Swap>& swaps, const Variant& variant, std::vector<std::string>& remarks);

    struct To {
        Id<Profile> profile;
        const Variant* by = nullptr;
    };
    std::map<Id<Profile>, To> m_to;
};

} // namespace miterbook
