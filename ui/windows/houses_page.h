// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"
#include "windows/house_line.h"

#include <QTimer>
#include <QWidget>

class QAction;
class QComboBox;
class QStackedWidget;

namespace miterbook {

class TablePanel;
template <class Row>
class TableModel;
template <class Row>
struct TableSpec;

/// The first screen: every house by stage with its price and hours.
class HousesPage final : public QWidget {
    Q_OBJECT
public:
    explicit HousesPage(Desk& desk, QWidget* parent = nullptr);
    ~HousesPage() override;

    const QList<QAction*>& actions() const { return m_actions; }

public Q_SLOTS:
    /// Asks for what a new house needs; the plan may be none.
    void startHouse(miterbook::Id<miterbook::Plan> plan);

Q_SIGNALS:
    void opened(const miterbook::JobRef& job);

protected:
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    TableSpec<HouseLine> spec();
    QAction* action(const QString& words, const QKeySequence& keys, void (HousesPage::*slot)());
    void makeActions();
    void makeStageFilter();
    void startAny() { startHouse({}); }
    void openCurrent();
    void removeCurrent();
    void troubleFirst();
    void store(EditBuilder& edit, House house);
    const House* current() const;
    void showOne();
    void wantVisible();

    Desk& m_desk;
    HouseFigures m_figures;
    TableModel<HouseLine>* m_model;
    TablePanel* m_panel;
    QComboBox* m_stage;
    QStackedWidget* m_either;
    QList<QAction*> m_actions;
    QTimer m_later; ///< figures come in bursts: the list is read again once for several
};

} // namespace miterbook
