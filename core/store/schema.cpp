// SPDX-License-Identifier: GPL-3.0-or-later
#include "store/schema.h"

#include <algorithm>
#include <utility>

namespace miterbook {

int formatOf(const std::vector<SchemaStep>& steps) {
    return steps.empty() ? 0 : steps.back().number;
}

namespace {

bool isComment(std::string_view line) {
    return line.starts_with("--");
}

} // namespace

Result<std::vector<std::string>> statementsOf(std::string_view sql) {
    std::vector<std::string> statements;
    std::string statement;
    while (!sql.empty()) {
        const std::size_t end = std::min(sql.find('\n'), sql.size());
        std::string_view line = sql.substr(0, end);
        sql.remove_prefix(std::min(end + 1, sql.size()));
        while (!line.empty() && (line.back() == '\r' || line.back() == ' '))
            line.remove_suffix(1);
        if (line.empty() || isComment(line))
            continue;
        statement += line;
        if (line.back() == ';')
            statements.push_back(std::exchange(statement, {}));
        else
            statement += '\n';
    }
    if (!statement.empty())
        return Error{Fault::storage,
            "The last statement of a step of the schema has no semicolon: " + statement};
    return statements;
}

Result<void> runSteps(Connection& connection, const std::vector<SchemaStep>& steps, int from) {
    for (const SchemaStep& step : steps) {
        if (step.number <= from)
            continue;
        const auto statements = statementsOf(step.sql);
        if (!statements)
            return statements.error();
        for (const std::string& statement : *statements) {
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
