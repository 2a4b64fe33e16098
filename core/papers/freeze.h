// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "book/price_book.h"
#include "job/issued_paper.h"
#include "papers/paper.h"

namespace miterbook {

/// A paper of text and tables as JSON that says everything of it: what was frozen prints for ever
/// as it did. Errors: a paper of drawings or labels is not given out of hand.
Result<std::string> freezePaper(const Paper& paper);

/// The paper of such a text. Errors: a sentence when it cannot be read.
Result<Paper> thawPaper(const std::string& text);

/// A row with the paper frozen, ready to be issued.
Result<IssuedPaper> issuedPaper(IssuedPaper row, const Paper& paper);

/// The paper as it was issued, with the logo that it went out with. Errors: a sentence when its
/// text is not what its SHA-256 says, so that the book file has been damaged or changed by another
/// program.
Result<Paper> paperAsIssued(const IssuedPaper& issued, const PriceBook& prices);

} // namespace miterbook
