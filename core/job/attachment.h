// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/date.h"
#include "basics/long_text.h"
#include "basics/result.h"
#include "bill/extra.h"

namespace miterbook {

struct Plan;

/// A photo that belongs to an extra, kept in the book itself: a folder of pictures is lost when the
/// book moves. Read with the house's plan.
struct Attachment {
    static constexpr std::size_t mostBytes = 1'000'000; ///< of the picture, before base64

    Id<Attachment> id;
    Id<Plan> plan; ///< the house's own
    Id<Extra> extra;
    Date date = noDate;
    std::string name; ///< of the file it came from
    std::string type; ///< "image/jpeg" or "image/png"
    LongText content; ///< base64 (RFC 4648)

    bool operator==(const Attachment&) const = default;
};

template <>
struct Describe<Attachment> {
    static constexpr std::string_view table = "attachment";
    static constexpr std::string_view noun = "photo";
    static constexpr void allFields(auto&& take) {
        take(field("id", &Attachment::id), field("plan", &Attachment::plan),
            field("extra", &Attachment::extra), field("date", &Attachment::date),
            field("name", &Attachment::name), field("type", &Attachment::type),
            field("content", &Attachment::content));
    }
};

/// A JPEG or PNG picture of at most `mostBytes`, in sound base64.
Result<void> checkAttachment(const Attachment& photo);

} // namespace miterbook
