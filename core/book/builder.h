// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/fields.h"
#include "basics/id.h"

#include <string>

namespace miterbook {

/// The shop's customer.
struct Builder {
    Id<Builder> id;
    std::string name;
    std::string contact;
    std::string address; ///< lines separated by '\n'
    std::string phone;
    std::string email;
    std::string note;

    bool operator==(const Builder&) const = default;
};

template <>
struct Describe<Builder> {
    static constexpr std::string_view table = "builder";
    static constexpr std::string_view noun = "builder";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Builder::id), field("name", &Builder::name),
            field("contact", &Builder::contact), field("address", &Builder::address),
            field("phone", &Builder::phone), field("email", &Builder::email),
            field("note", &Builder::note));
    }
};

/// A correction of a schedule's header that the shop made once: "WDW" means "mark".
struct HeaderName {
    Id<HeaderName> id;
    std::string schedule; ///< "windows", "doors" or "rooms"
    std::string header;   ///< as it stands in the file, lower case
    std::string column;   ///< the column it means; empty: leave it out

    bool operator==(const HeaderName&) const = default;
};

template <>
struct Describe<HeaderName> {
    static constexpr std::string_view table = "header_name";
    static constexpr std::string_view noun = "schedule header";
    static constexpr void allFields(auto&& take) {
        take(field("id", &HeaderName::id), field("schedule", &HeaderName::schedule),
            field("header", &HeaderName::header), field("column", &HeaderName::column));
    }
};

} // namespace miterbook
