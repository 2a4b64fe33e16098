// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/long_work.h"

#include <QApplication>
#include <QProgressDialog>
#include <QThread>
#include <QTimer>
#include <QWidget>

#include <gtest/gtest.h>

namespace miterbook {
namespace {

TEST(LongWorkTest, IsDoneOnAnotherThread) {
    QThread* mine = QThread::currentThread();
    QThread* other = mine;
    EXPECT_TRUE(runLong(nullptr, QStringLiteral("Reckoning"), [&](LongWork& work) {
        other = QThread::currentThread();
        work.setStep(3, 3);
    }));
    EXPECT_NE(other, mine);
}

TEST(LongWorkTest, TheWindowLivesAndCancelStops) {
    QWidget window;
    window.show();
    int alive = 0;
    QTimer beat;
    QObject::connect(&beat, &QTimer::timeout, &window, [&] {
        ++alive;
        auto* dialog = window.findChild<QProgressDialog*>();
        if (dialog && alive == 3)
            Q_EMIT dialog->canceled(); // as its button does
    });
    beat.start(10);
    int steps = 0;
    EXPECT_FALSE(runLong(&window, QStringLiteral("Reckoning"), [&](LongWork& work) {
        while (!work.stopped()) {
            work.setStep(++steps, 1000);
            QThread::msleep(1);
        }
    }));
    EXPECT_GE(alive, 3); // events went on while it worked
    EXPECT_GT(steps, 0);
}

TEST(LongWorkTest, ShortWorkShowsNothing) {
    QWidget window;
    window.show();
    bool shown = false;
    EXPECT_TRUE(
        runLong(&window, QStringLiteral("Reckoning"), [&](LongWork&) { QThread::msleep(20); }));
    for (auto* dialog : window.findChildren<QProgressDialog*>())
        shown = shown || dialog->isVisible();
    EXPECT_FALSE(shown);
}

} // namespace
} // namespace miterbook
