// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "bid/bid_setup.h"

#include <functional>

class QWidget;

namespace miterbook {

class Desk;

/// A table to type the allowances of a bid into. `present` gives the setup of the job on the
/// screen.
QWidget* allowanceTable(Desk& desk, std::function<BidSetup()> present, QWidget* parent);

} // namespace miterbook
