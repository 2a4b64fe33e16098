// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/cut/measure_rows.h"

#include <QWidget>

#include <vector>

class QAction;
class QLabel;

namespace miterbook {

class CutDesk;
class DataTable;
class TableModelBase;

/// The table of measures: typed as the tape goes, pasted, brought in, or begun from the plan.
class MeasuresTab final : public QWidget {
    Q_OBJECT
public:
    explicit MeasuresTab(CutDesk& cut, QWidget* parent = nullptr);

    DataTable& table() const { return *m_table; }
    /// Brings in a file of measures; what could not be read is said below the table.
    void bringFile(const QString& path);
    QAction* bringAction() const { return m_bring; }
    QAction* planSizesAction() const { return m_planSizes; }

private:
    void refresh();
    void chooseFile();
    void takePlanSizes();
    void sayRemarks();

    CutDesk& m_cut;
    std::vector<MeasureRow> m_rows; ///< as last seen: to make them takes the whole saw sheet
    TableModelBase* m_model;
    DataTable* m_table = nullptr;
    QAction* m_bring;
    QAction* m_planSizes;
    QLabel* m_remarks;
    QLabel* m_brought;
};

} // namespace miterbook
