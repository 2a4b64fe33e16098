// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "desk/job_ref.h"

#include <QWidget>

class QTabWidget;

namespace miterbook {

class AgingTab;
class DataTable;
class Desk;
class MoneyDesk;

/// What goes over all houses: who owes, what is to be billed, reminders, dates.
class OfficePage final : public QWidget {
    Q_OBJECT
public:
    OfficePage(Desk& desk, MoneyDesk& money, QWidget* parent = nullptr);

    QTabWidget& tabs() const { return *m_tabs; }
    AgingTab& agingTab() const { return *m_aging; }
    DataTable& aging() const;
    DataTable& houses() const { return *m_houses; }

Q_SIGNALS:
    void opened(const miterbook::JobRef& job);

private:
    QWidget* housesTab();
    void openHouse();

    Desk& m_desk;
    MoneyDesk& m_money;
    QTabWidget* m_tabs;
    AgingTab* m_aging;
    DataTable* m_houses = nullptr;
};

} // namespace miterbook
