// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/opened_book.h"
#include "papers/paper.h"

#include <QCommandLineParser>

#include <algorithm>
#include <array>
#include <string_view>

namespace miterbook {

/// Papers that are not reckoned from a plan: those that were sent or issued, and a builder's
/// account.
inline constexpr std::array<std::string_view, 4> billPaperNames{
    "sent-bid", "invoice", "extra", "statement"};

inline bool isBillPaper(std::string_view name) {
    return std::ranges::find(billPaperNames, name) != billPaperNames.end();
}

/// The paper that `print` asks for: a bid as it was sent, an invoice or credit note as it was
/// issued, an extra, or a builder's statement. Errors: one sentence.
Result<Paper> billPaper(
    const std::string& name, OpenedBook& opened, const QCommandLineParser& parser, Date date);

/// The builder of a name. Errors: none of that name (the names there are).
Result<Id<Builder>> findBuilder(const Book& book, const std::string& name);

} // namespace miterbook
