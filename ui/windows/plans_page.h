// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"
#include "widgets/table_spec.h"

#include <QWidget>

class QAction;
class QStackedWidget;

namespace miterbook {

class BookActions;
class Desk;
class TablePanel;
template <class Row>
class TableModel;

/// Every builder's plans by plan set.
class PlansPage final : public QWidget {
    Q_OBJECT
public:
    PlansPage(Desk& desk, BookActions& files, QWidget* parent = nullptr);
    ~PlansPage() override;

    const QList<QAction*>& actions() const { return m_actions; }

Q_SIGNALS:
    void opened(const miterbook::JobRef& job);
    /// A house is to be started from this plan.
    void startWanted(miterbook::Id<miterbook::Plan> plan);

private:
    TableSpec<Plan> spec();
    QAction* action(const QString& words, const QKeySequence& keys, void (PlansPage::*slot)());
    void newPlan();
    void openCurrent();
    void startHouse();
    void writeCurrent();
    void removeCurrent();
    Id<Plan> current() const;
    void showOne();

    Desk& m_desk;
    BookActions& m_files;
    TableModel<Plan>* m_model;
    TablePanel* m_panel;
    QStackedWidget* m_either;
    QList<QAction*> m_actions;
};

} // namespace miterbook
