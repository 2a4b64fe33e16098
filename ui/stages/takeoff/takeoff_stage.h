// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/stage.h"

#include <QPointer>

namespace miterbook {

class Desk;
class FigureDesk;
class PaperActions;
class TakeoffPage;

/// The takeoff: every piece and quantity with its source. Read only; it follows the plan.
class TakeoffStage final : public Stage {
    Q_OBJECT
public:
    TakeoffStage(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);
    ~TakeoffStage() override;

    QString title() const override;
    QWidget* page() override;
    void showJob(const JobRef& job) override;
    QList<QAction*> actions() const override;
    QString nextStep() const override;

private:
    FigureDesk& m_figures;
    QPointer<TakeoffPage> m_page;
    PaperActions* m_paper;
};

} // namespace miterbook
