// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QWidget;

namespace miterbook {

class BillDesk;

/// What the builder takes off for damage or for work that others had to do, typed into a table.
QWidget* backchargesTab(BillDesk& bill);

} // namespace miterbook
