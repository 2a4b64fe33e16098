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
extern const Command journalCommand;
extern const Command sampleCommand;
extern const Command backupsCommand;
extern const Command restoreCommand;
extern const Command snapshotCommand;
extern const Command takeInCommand;
extern const Command checkCommand;
extern const Command salvageCommand;

} // namespace miterbook
