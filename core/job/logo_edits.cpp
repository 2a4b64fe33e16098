// SPDX-License-Identifier: GPL-3.0-or-later
#include "job/logo_edits.h"

#include "basics/sha256.h"
#include "book/checks.h"

#include <algorithm>

namespace miterbook {

namespace {

Shop withLogo(const Book& book, Id<Logo> logo) {
    Shop shop = book.prices.shop();
    shop.id = Id<Shop>(1);
    shop.logo = logo;
    return shop;
}

} // namespace

Result<Edit> takeLogo(
    const Book& book, IdSource& ids, std::string name, std::string type, std::string content) {
    Logo logo;
    logo.name = std::move(name);
    logo.type = std::move(type);
    logo.sum = sha256(content);
    logo.content = Bytes(std::move(content));
    if (auto sound = check(logo, book.prices); !sound)
        return sound.error();
    EditBuilder edit(book, "Take " + logo.name + " as the shop's logo");
    const auto& kept = book.prices.of<Logo>();
    const auto same = std::ranges::find_if(
        kept, [&](const auto& entry) { return entry.second.sum == logo.sum; });
    logo.id = same == kept.end() ? ids.next<Logo>() : same->first;
    if (same == kept.end())
        edit.put(logo);
    edit.put(withLogo(book, logo.id));
    return edit.take();
}

Edit leaveLogo(const Book& book) {
    return putEdit(book, "Leave the shop's logo off", withLogo(book, {}));
}

} // namespace miterbook
