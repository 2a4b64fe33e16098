// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/edit.h"

#include <string>

namespace miterbook {

/// The edit that adds every row of a book: what a new book begins with.
Edit wholeEdit(const Book& book, std::string sentence);

} // namespace miterbook
