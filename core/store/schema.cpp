// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/schema.h"

namespace miterbook {

int formatOf(const std::vector<SchemaStep>& steps) {
    return steps.empty() ? 0 : steps.back().number;
}

std::vector<std::string> statementsOf(std::string_view sql) {
    std::vector<std::string> statements;
    constexpr std::string_view end = ";\n";
    for (std::size_t from = 0; from < sql.size();) {
        const std::size_t at = sql.find(end, from);
        if (at == std::string_view::npos)
            break; // after the last semicolon there is nothing but white space
        statements.emplace_back(sql.substr(from, at - from));
        from = at + end.size();
    }
    return statements;
}

Result<void> runSteps(Connection& connection, const std::vector<SchemaStep>& steps, int from) {
    for (const SchemaStep& step : steps) {
        if (step.number <= from)
            continue;
        for (const std::string& statement : statementsOf(step.sql)) {
            if (auto ran = connection.run(statement); !ran)
                return ran;
        }
        // PRAGMA takes no placeholders; the number is ours.
        const std::string number = std::to_string(step.number);
        if (auto noted = connection.run("PRAGMA user_version = " + number); !noted)
            return noted;
    }
    return {};
}

} // namespace miterbook
