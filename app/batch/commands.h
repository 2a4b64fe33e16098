// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "batch/command.h"

namespace miterbook {

extern const Command newCommand;
extern const Command bringCommand;
extern const Command listCommand;
extern const Command startCommand;
extern const Command printCommand;
extern const Command packCommand;
extern const Command sampleCommand;

} // namespace miterbook
