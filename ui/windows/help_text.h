// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QString>

namespace miterbook {

// The pages of the help, as plain text.

QString walkText();
QString keysText();
QString aboutText();

} // namespace miterbook
