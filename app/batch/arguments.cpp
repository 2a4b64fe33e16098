// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/arguments.h"

namespace miterbook {

Result<std::string> positional(const QCommandLineParser& parser, int index, const char* what) {
    const QStringList given = parser.positionalArguments();
    if (index >= given.size())
        return badInput(std::string("Say ") + what + ".");
    return given.at(index).toStdString();
}

Result<void> noMoreThan(const QCommandLineParser& parser, int count) {
    const QStringList given = parser.positionalArguments();
    if (given.size() <= count)
        return {};
    return badInput("\"" + given.at(count).toStdString() + "\" is one argument too many.");
}

void addValue(QCommandLineParser& parser, const char* name, const char* value, const char* help,
    const char* standard) {
    parser.addOption(QCommandLineOption(QString::fromLatin1(name), QString::fromUtf8(help),
        QString::fromLatin1(value), QString::fromLatin1(standard)));
}

void addSwitch(QCommandLineParser& parser, const char* name, const char* help) {
    parser.addOption(QCommandLineOption(QString::fromLatin1(name), QString::fromUtf8(help)));
}

std::string value(const QCommandLineParser& parser, const char* name) {
    return parser.value(QString::fromLatin1(name)).toStdString();
}

std::vector<std::string> values(const QCommandLineParser& parser, const char* name) {
    std::vector<std::string> all;
    for (const QString& each : parser.values(QString::fromLatin1(name)))
        all.push_back(each.toStdString());
    return all;
}

bool isSet(const QCommandLineParser& parser, const char* name) {
    return parser.isSet(QString::fromLatin1(name));
}

} // namespace miterbook
