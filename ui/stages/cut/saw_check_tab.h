// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/length_text.h"

#include <QWidget>

class QLabel;
class QLineEdit;

namespace miterbook {

class CutDesk;
class DataTable;
class TableModelBase;

/// Test cuts of the station as it stands, the correction that the sheet carries, what an angle
/// error does to a frame, and what a bowed stick does to an angle.
class SawCheckTab final : public QWidget {
    Q_OBJECT
public:
    explicit SawCheckTab(CutDesk& cut, QWidget* parent = nullptr);

    DataTable& table() const { return *m_table; }
    QString result() const;

private:
    void refresh();
    void heedUnit();
    void sayBow();
    void forget();

    CutDesk& m_cut;
    TableModelBase* m_model;
    DataTable* m_table = nullptr;
    QLabel* m_result;
    LengthUnit m_written; ///< in which the two below are typed
    QLineEdit* m_bow;
    QLineEdit* m_stick;
    QLabel* m_bowResult;
};

} // namespace miterbook
