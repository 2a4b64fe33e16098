// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "batch/console.h"

#include <QStringList>

#include <string_view>
#include <vector>

class QCommandLineParser;

namespace miterbook {

/// One batch command: its word, what it does, the arguments it takes, and the doing.
struct Command {
    std::string_view name;
    std::string_view summary;
    void (*declare)(QCommandLineParser&);
    Result<void> (*run)(const QCommandLineParser&, Console&);
};

/// All of them, in the order a job walks through them.
const std::vector<Command>& commands();

/// The command of a word; nullptr when there is none.
const Command* findCommand(std::string_view name);

/// Runs a command with the program's arguments (program name first, command word left out).
/// Returns the exit status: 0, or 1 after one sentence on console.err.
int runCommand(const Command& command, const QStringList& arguments, Console& console);

/// What `miterbook --help` prints.
void printOverview(Console& console);

} // namespace miterbook
