// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace miterbook {

class Desk;

/// How invoices are numbered and followed up, and what the ledger calls its accounts.
QWidget* billingSetupForm(Desk& desk);

} // namespace miterbook
