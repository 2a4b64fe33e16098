// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "papers/paper.h"

#include <string>

namespace miterbook {

/// Plain text, 78 columns, tables aligned.
std::string paperText(const Paper& paper);

/// Every table one after another, RFC 4180 with CRLF; the exact value where a cell has one. Text
/// that a spreadsheet would take for a formula is prefixed with an apostrophe.
std::string paperCsv(const Paper& paper);

/// {"paper": name, "tables": [{"title", "columns", "rows"}], "totals": {...}}, and "cautions":
/// [...] where the paper has any. Numbers as JSON numbers with their exact decimals; every row has
/// as many values as its table has columns.
std::string paperJson(const Paper& paper);

} // namespace miterbook
