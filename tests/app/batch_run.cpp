// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/batch_run.h"

#include "batch/command.h"

#include <sstream>

namespace miterbook {

BatchRun runBatch(const std::vector<std::string>& words) {
    QStringList arguments{QStringLiteral("miterbook")};
    for (const std::string& word : words)
        arguments << QString::fromStdString(word);
    const Command* command = findCommand(arguments.takeAt(1).toStdString());
    if (!command)
        return {-1, {}, "no such command"};
    std::ostringstream out;
    std::ostringstream err;
    Console console{out, err};
    const int status = runCommand(*command, arguments, console);
    return {status, out.str(), err.str()};
}

std::string sampleFile(const std::string& path) {
    return std::string(MITERBOOK_SOURCE_DIR) + "/sample-jobs/" + path;
}

} // namespace miterbook
