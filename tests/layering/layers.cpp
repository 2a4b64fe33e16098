// SPDX-License-Identifier: GPL-3.0-or-later
#include "layering/layers.h"

#include "layering/includes.h"

#include <algorithm>
#include <cctype>

namespace miterbook {

namespace {

/// An include of one project file by another, or of a header from elsewhere (`to` empty).
struct Step {
    std::string from;
    std::string to;
    std::string written;
};

std::string fileName(const std::string& path) {
    return path.substr(path.rfind('/') + 1);
}

bool isQt(const std::string& written) {
    const std::string name = fileName(written);
    const auto second = name.size() > 1 ? static_cast<unsigned char>(name[1]) : 0U;
    return written.starts_with("Qt") || (name.starts_with('Q') && std::isupper(second) != 0)
        || name.starts_with("Qt");
}

bool isDatabase(const std::string& written) {
    const std::string name = fileName(written);
    return name.starts_with("QSql") || written.starts_with("QtSql") || name.starts_with("sqlite3");
}

std::string topFolder(const std::string& path) {
    return path.substr(0, path.find('/'));
}

std::string outOfOrder(
    const Step& step, const std::string& top, const std::vector<std::string>& order) {
    const std::string from = folderBelow(step.from, top);
    const std::string to = folderBelow(step.to, top);
    if (from.empty() || to.empty() || from == to)
        return {};
    const auto own = std::ranges::find(order, from);
    const auto other = std::ranges::find(order, to);
    if (own == order.end())
        return top + from + " is not in the order of " + top + "CMakeLists.txt.";
    if (other == order.end())
        return top + to + " is not in the order of " + top + "CMakeLists.txt.";
    return other < own ? std::string()
                       : "includes " + step.to + ", but " + to + " comes after " + from + " in "
            + top + "CMakeLists.txt.";
}

std::string outOfTop(const Step& step) {
    const std::string from = topFolder(step.from);
    const std::string to = topFolder(step.to);
    const bool coreLooksUp = from == "core" && (to == "ui" || to == "app" || to == "tests");
    const bool uiLooksUp = from == "ui" && (to == "app" || to == "tests");
    const bool appLooksUp = from == "app" && to == "tests";
    if (coreLooksUp || uiLooksUp || appLooksUp)
        return "includes " + step.to + ", but " + from + "/ knows nothing of " + to + "/.";
    if (from == "ui" && step.to.starts_with("core/store/"))
        return "includes " + step.to + ", but ui/ talks to the Desk, never to the store.";
    return {};
}

std::string intoAnotherStage(const Step& step) {
    const std::string from = folderBelow(step.from, "ui/stages/");
    const std::string to = folderBelow(step.to, "ui/stages/");
    if (from.empty() || to.empty() || from == to)
        return {};
    return "includes " + step.to + ", but a stage never includes another.";
}

std::string wrongLibrary(const Step& step) {
    if (!step.to.empty() || topFolder(step.from) == "tests")
        return {};
    const bool store = step.from.starts_with("core/store/");
    if (!store && isDatabase(step.written))
        return "includes " + step.written + ", but only core/store/ knows the database.";
    if (step.from.starts_with("core/") && !store && !step.from.starts_with("core/io/")
        && isQt(step.written))
        return "includes " + step.written + ", but core/ knows no Qt outside io/ and store/.";
    return {};
}

} // namespace

std::vector<Finding> brokenWalls(const std::vector<SourceFile>& files) {
    const FolderOrder order = readOrder(files);
    const IncludeResolver resolver(files);
    std::vector<Finding> findings;
    for (const SourceFile& file : files) {
        for (const Include& include : includesOf(file)) {
            const Step step{file.path, resolver.resolve(include, file), include.path};
            for (const std::string& sentence :
                {outOfOrder(step, "core/", order.core), outOfOrder(step, "ui/", order.ui),
                    outOfTop(step), intoAnotherStage(step), wrongLibrary(step)}) {
                if (!sentence.empty())
                    findings.push_back({file.path, include.line, sentence});
            }
        }
    }
    return findings;
}

} // namespace miterbook
