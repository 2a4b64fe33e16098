// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/stage.h"

#include <QPointer>

namespace miterbook {

class BidPage;
class Desk;
class FigureDesk;
class PaperActions;

/// The bid: price, cost and hours, and the paper for the builder.
class BidStage final : public Stage {
    Q_OBJECT
public:
    BidStage(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);
    ~BidStage() override;

    QString title() const override;
    QWidget* page() override;
    void showJob(const JobRef& job) override;
    QList<QAction*> actions() const override;
    QString nextStep() const override;

private:
    FigureDesk& m_figures;
    QPointer<BidPage> m_page;
    PaperActions* m_paper;
    PaperActions* m_sheet; ///< of the whole plan set
    PaperActions* m_worksheet; ///< for the shop
    QAction* m_send;
};

} // namespace miterbook
