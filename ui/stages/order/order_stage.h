// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/stage.h"

#include <QPointer>

namespace miterbook {

class OrderPage;
class Desk;
class FigureDesk;
class PaperActions;

/// The order: the buy list, how sticks are cut, and the paper for the yard.
class OrderStage final : public Stage {
    Q_OBJECT
public:
    OrderStage(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);
    ~OrderStage() override;

    QString title() const override;
    QWidget* page() override;
    void showJob(const JobRef& job) override;
    QList<QAction*> actions() const override;
    QString nextStep() const override;

private:
    FigureDesk& m_figures;
    QPointer<OrderPage> m_page;
    PaperActions* m_paper;
};

} // namespace miterbook
