// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/stage.h"

#include <QPointer>

namespace miterbook {

class Desk;
class FigureDesk;
class ReviewPage;

/// Bid against actual, plans compared, and labour rates learned.
class ReviewStage final : public Stage {
    Q_OBJECT
public:
    ReviewStage(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);
    ~ReviewStage() override;

    QString title() const override;
    QWidget* page() override;
    void showJob(const JobRef& job) override;
    QList<QAction*> actions() const override { return m_actions; }
    QString nextStep() const override;

private:
    QPointer<ReviewPage> m_page;
    QList<QAction*> m_actions;
};

} // namespace miterbook
