// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "store/connection.h"

#include <string>
#include <string_view>
#include <vector>

namespace miterbook {

/// One numbered file of schema/. A statement ends with a semicolon at the end of its line;
/// comments have lines of their own.
struct SchemaStep {
    int number;
    std::string_view sql;
};

/// All steps that this program knows, 1, 2, ... Made from schema/*.sql when it is built.
const std::vector<SchemaStep>& schemaSteps();

/// The format that running all of `steps` gives: the last number, 0 for none.
int formatOf(const std::vector<SchemaStep>& steps);

/// Runs the steps above `from` in order and notes the new format; inside the caller's transaction.
Result<void> runSteps(Connection& connection, const std::vector<SchemaStep>& steps, int from);

/// The statements of a step, one by one, without comment lines. Errors: the last has no semicolon.
Result<std::vector<std::string>> statementsOf(std::string_view sql);

} // namespace miterbook
