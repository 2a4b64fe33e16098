// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/console.h"
#include "batch/opened_book.h"

#include <QCommandLineParser>

namespace miterbook {

/// Brings in a supplier's price list (--prices, --supplier, --from, --per), whole or not at all;
/// each row that is wrong is said.
Result<void> bringPrices(OpenedBook& opened, const QCommandLineParser& parser, Console& console);

} // namespace miterbook
