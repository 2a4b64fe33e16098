// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;

namespace miterbook {

class DataTable;
class Desk;

/// Dates to keep in mind: insurance, licence, waivers due with a payment, dates of lien rights as
/// the user enters them.
class RemindersTab final : public QWidget {
    Q_OBJECT
public:
    explicit RemindersTab(Desk& desk, QWidget* parent = nullptr);

    DataTable& table() const { return *m_table; }
    QString due() const;

private:
    void markDone();
    void refresh();

    Desk& m_desk;
    DataTable* m_table = nullptr;
    QLabel* m_due;
    QLabel* m_caution;
};

} // namespace miterbook
