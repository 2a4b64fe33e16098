// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"

#include <QCommandLineParser>

#include <string>
#include <vector>

namespace miterbook {

/// The positional argument at `index`; the sentence names `what` when it is missing.
Result<std::string> positional(const QCommandLineParser& parser, int index, const char* what);

/// Refuses positional arguments beyond the first `count`.
Result<void> noMoreThan(const QCommandLineParser& parser, int count);

/// Adds `--name VALUE`.
void addValue(QCommandLineParser& parser, const char* name, const char* value, const char* help,
    const char* standard = nullptr);

/// Adds `--name` without a value.
void addSwitch(QCommandLineParser& parser, const char* name, const char* help);

/// The value of an option, empty when it was not given.
std::string value(const QCommandLineParser& parser, const char* name);
/// All values of an option that may be given several times.
std::vector<std::string> values(const QCommandLineParser& parser, const char* name);
bool isSet(const QCommandLineParser& parser, const char* name);

} // namespace miterbook
