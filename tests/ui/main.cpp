// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/table_style.h"

#include <QApplication>
#include <QPalette>
#include <QStandardPaths>

#include <gtest/gtest.h>

using miterbook::TableStyle;

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
    QApplication::setStyle(new TableStyle);          // as the program has it
    if (qEnvironmentVariableIsSet("MITERBOOK_DARK")) // for pictures, see window_test.cpp
        QApplication::setPalette(QPalette(QColor(0x30, 0x32, 0x35), QColor(0x25, 0x27, 0x2A)));
    return RUN_ALL_TESTS();
}
