// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

namespace miterbook {

/// Puts a picture on the shop's letterhead; one that the book has already is not kept twice.
/// Errors: no PNG or JPEG, nothing in it, over Logo::mostBytes.
Result<Edit> takeLogo(
    const Book& book, IdSource& ids, std::string name, std::string type, std::string content);

/// The letterhead without a picture. The picture stays in the book for papers that have it.
Edit leaveLogo(const Book& book);

} // namespace miterbook
