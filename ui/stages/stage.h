// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"

#include <QList>
#include <QObject>
#include <QString>

class QAction;
class QWidget;

namespace miterbook {

/// One stage of the strip: its page and what it can do. Stages know the desk and the figures, never
/// each other.
class Stage : public QObject {
    Q_OBJECT
public:
    using QObject::QObject;

    /// The trade's word on the strip: "Plan".
    virtual QString title() const = 0;
    /// The page; owned by the stage until the window takes it.
    virtual QWidget* page() = 0;
    /// Shows another job; called before the page is shown and when the job changes.
    virtual void showJob(const JobRef& job) = 0;
    /// What the stage adds to the window's Stage menu, in order.
    virtual QList<QAction*> actions() const = 0;
    /// The next thing to do here in plain words; empty when nothing is left to do.
    virtual QString nextStep() const = 0;

Q_SIGNALS:
    void nextStepChanged();
};

} // namespace miterbook
