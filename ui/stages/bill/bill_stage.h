// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/stage.h"

#include <QKeySequence>
#include <QPointer>

namespace miterbook {

class BillPage;
class Desk;
class FigureDesk;

/// Extras, draws, invoices and payments of a house.
class BillStage final : public Stage {
    Q_OBJECT
public:
    BillStage(Desk& desk, FigureDesk& figures, QObject* parent = nullptr);
    ~BillStage() override;

    QString title() const override;
    QWidget* page() override;
    void showJob(const JobRef& job) override;
    QList<QAction*> actions() const override { return m_actions; }
    QString nextStep() const override;

private:
    void add(const QString& words, const QKeySequence& keys, int tab, auto* page, auto slot);

    QPointer<BillPage> m_page;
    QList<QAction*> m_actions;
};

} // namespace miterbook
