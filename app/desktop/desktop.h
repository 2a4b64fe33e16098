// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

class QApplication;

namespace miterbook {

/// The desktop, on the book named by the first argument, else the one used last, else on none.
/// Returns the exit status.
int runDesktop(QApplication& application);

} // namespace miterbook
