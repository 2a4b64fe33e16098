// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;

namespace miterbook {

class DataTable;
class Desk;
class Timeline;

/// Days at the houses and who goes there, as a table and as bars; clashes in words; a calendar file
/// for phones.
class DatesTab final : public QWidget {
    Q_OBJECT
public:
    explicit DatesTab(Desk& desk, QWidget* parent = nullptr);

    DataTable& table() const { return *m_table; }
    QString clashWords() const;

private:
    void refresh();
    void saveCalendar();

    Desk& m_desk;
    DataTable* m_table = nullptr;
    Timeline* m_timeline;
    QLabel* m_clashes;
};

} // namespace miterbook
