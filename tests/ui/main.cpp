// SPDX-License-Identifier: GPL-3.0-or-later
#include <QApplication>
#include <QStandardPaths>

#include <gtest/gtest.h>

int main(int argc, char** argv) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM"))
        qputenv("QT_QPA_PLATFORM", "offscreen");
    ::testing::InitGoogleTest(&argc, argv);
    QStandardPaths::setTestModeEnabled(true);
    QCoreApplication::setOrganizationName(QStringLiteral("miterbook-tests"));
    // Each run has settings of its own: widths kept by another would change what is tested.
    QCoreApplication::setApplicationName(
        QStringLiteral("ui-test-%1").arg(QCoreApplication::applicationPid()));
    const QApplication application(argc, argv);
    return RUN_ALL_TESTS();
}
