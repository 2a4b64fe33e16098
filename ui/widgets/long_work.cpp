// SPDX-License-Identifier: GPL-3.0-or-later
#include "widgets/long_work.h"

#include <QEventLoop>
#include <QProgressDialog>
#include <QThread>
#include <QTimer>

#include <memory>

namespace miterbook {

namespace {

constexpr int quietFor = 400; // milliseconds before the window says anything
constexpr int lookEvery = 40;

/// The dialog about a work; it asks the work how far it is.
class WorkDialog {
public:
    WorkDialog(QWidget* parent, const QString& what, LongWork& work)
        : m_dialog(parent)
        , m_work(work) {
        m_dialog.setWindowModality(Qt::WindowModal);
        m_dialog.setLabelText(what);
        m_dialog.setRange(0, 0);
        m_dialog.setMinimumDuration(quietFor);
        m_dialog.setAutoReset(false);
        m_dialog.setAutoClose(false);
        m_dialog.setAccessibleName(what);
        QObject::connect(
            &m_dialog, &QProgressDialog::canceled, &m_dialog, [this] { m_work.stop(); });
    }
    void look() {
        if (m_work.total() <= 0 || m_work.stopped())
            return;
        m_dialog.setMaximum(m_work.total());
        m_dialog.setValue(m_work.done());
    }

private:
    QProgressDialog m_dialog;
    LongWork& m_work;
};

} // namespace

bool runLong(QWidget* parent, const QString& what, const std::function<void(LongWork&)>& work) {
    LongWork state;
    const std::unique_ptr<QThread> thread(QThread::create([&] { work(state); }));
    QEventLoop loop;
    QObject::connect(thread.get(), &QThread::finished, &loop, &QEventLoop::quit);
    WorkDialog dialog(parent, what, state);
    QTimer timer;
    QObject::connect(&timer, &QTimer::timeout, &loop, [&] { dialog.look(); });
    timer.start(lookEvery);
    thread->start();
    loop.exec();
    thread->wait();
    return !state.stopped();
}

} // namespace miterbook
