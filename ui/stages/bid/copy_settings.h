// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "plan/plan.h"

class QWidget;

namespace miterbook {

class Desk;

/// Asks to which other plan or house the settings of a bid are copied, and does it.
void copySettingsDialog(Desk& desk, Id<Plan> from, QWidget* parent);

} // namespace miterbook
