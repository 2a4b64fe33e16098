// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/command.h"

#include "batch/commands.h"

#include <QCommandLineParser>

#include <algorithm>

namespace miterbook {

const std::vector<Command>& commands() {
    static const std::vector<Command> list{newCommand, bringCommand, listCommand, startCommand,
        printCommand, packCommand, journalCommand, backupsCommand, restoreCommand, snapshotCommand,
        takeInCommand, checkCommand, salvageCommand, sampleCommand};
    return list;
}

const Command* findCommand(std::string_view name) {
    const auto it = std::ranges::find(commands(), name, &Command::name);
    return it == commands().end() ? nullptr : &*it;
}

int runCommand(const Command& command, const QStringList& arguments, Console& console) {
    QCommandLineParser parser;
    parser.setApplicationDescription(QString::fromLatin1(command.summary.data()));
    const QCommandLineOption help = parser.addHelpOption();
    command.declare(parser);
    const bool understood = parser.parse(arguments);
    if (parser.isSet(help)) {
        console.out << parser.helpText().toStdString();
        return 0;
    }
    const Result<void> done = understood ? command.run(parser, console)
                                         : badInput(parser.errorText().toStdString());
    if (done)
        return 0;
    console.err << "miterbook " << command.name << ": " << done.error().sentence << '\n';
    return 1;
}

void printOverview(Console& console) {
    console.out << "miterbook                  the desktop, on the book used last\n"
                   "miterbook BOOK             the desktop, on this book\n";
    for (const Command& command : commands()) {
        console.out << "miterbook " << command.name
                    << std::string(command.name.size() < 17 ? 17 - command.name.size() : 1, ' ')
                    << command.summary << '\n';
    }
    console.out << "\nmiterbook COMMAND --help says what each takes.\n";
}

} // namespace miterbook
