// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/stage.h"

#include <QPointer>

namespace miterbook {

class Desk;
class FigureDesk;
class HoursPage;

/// The crew's time: written down, held against the bid, approved and paid.
class HoursStage final : public Stage {
    Q_OBJECT
public:
    HoursStage(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);
    ~HoursStage() override;

    QString title() const override;
    QWidget* page() override;
    void showJob(const JobRef& job) override;
    QList<QAction*> actions() const override { return m_actions; }
    QString nextStep() const override;

private:
    void bringIn();

    Desk& m_desk;
    QPointer<HoursPage> m_page;
    QList<QAction*> m_actions;
};

} // namespace miterbook
