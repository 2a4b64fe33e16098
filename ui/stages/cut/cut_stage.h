// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/stage.h"

#include <QPointer>

namespace miterbook {

class CutPage;
class Desk;
class FigureDesk;

/// The day at the saw, with its five papers.
class CutStage final : public Stage {
    Q_OBJECT
public:
    CutStage(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);
    ~CutStage() override;

    QString title() const override;
    QWidget* page() override;
    void showJob(const JobRef& job) override;
    QList<QAction*> actions() const override { return m_actions; }
    QString nextStep() const override;

private:
    void keepNumbers();

    QPointer<CutPage> m_page;
    QList<QAction*> m_actions;
};

} // namespace miterbook
