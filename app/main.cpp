// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/command.h"
#include "desktop/desktop.h"

#include <QApplication>

#include <iostream>

namespace {

/// Qt's own remarks about the machine are not for whoever reads a batch command's output.
void dropRemark(QtMsgType, const QMessageLogContext&, const QString&) {
}

/// A batch command needs no display, only fonts for PDF.
int runBatch(const miterbook::Command& command, int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qInstallMessageHandler(dropRemark);
    const QGuiApplication application(argc, argv);
    QStringList arguments = QCoreApplication::arguments();
    arguments.removeAt(1);
    miterbook::Console console{std::cout, std::cerr};
    return miterbook::runCommand(command, arguments, console);
}

int printHelp() {
    miterbook::Console console{std::cout, std::cerr};
    miterbook::printOverview(console);
    return 0;
}

} // namespace

int main(int argc, char** argv) {
    const std::string_view first = argc > 1 ? argv[1] : "";
    QCoreApplication::setApplicationName(QStringLiteral("miterbook"));
    QCoreApplication::setOrganizationName(QStringLiteral("miterbook"));
    QGuiApplication::setApplicationDisplayName(QStringLiteral("Miterbook"));
    if (first == "--help" || first == "-h")
        return printHelp();
    if (const miterbook::Command* command = miterbook::findCommand(first))
        return runBatch(*command, argc, argv);
    QApplication application(argc, argv);
    return miterbook::runDesktop(application);
}
