// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace miterbook {

class DataTable;
class TablePanel;
class WeekDesk;

/// The single entries behind the week grid, with their notes.
class EntriesTab final : public QWidget {
    Q_OBJECT
public:
    explicit EntriesTab(WeekDesk& week, QWidget* parent = nullptr);

    DataTable& table() const;

private:
    TablePanel* m_panel;
};

} // namespace miterbook
