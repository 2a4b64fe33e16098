// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/house_progress.h"

#include <QWidget>

class QLabel;

namespace miterbook {

class DataTable;
class FigureDesk;
class LinePicture;
class TableModelBase;
class WeekDesk;

/// The house's hours against its bid by piece of work: how much is done, what it will come to, and
/// what that does to the profit.
class ProgressTab final : public QWidget {
    Q_OBJECT
public:
    ProgressTab(WeekDesk& week, FigureDesk& figures, QWidget* parent = nullptr);

    const HouseProgress& progress() const { return m_progress; }
    /// What an hour costs in the bid that they are held against.
    Money crewRate() const { return m_crewRate; }
    DataTable& table() const { return *m_table; }
    LinePicture& picture() const { return *m_picture; }
    QString summary() const;

protected:
    void showEvent(QShowEvent* event) override;

private:
    TableModelBase* makeModel();
    void refresh();
    void say();
    QString sayMore(Hours more, const QString& money) const;
    void draw();

    WeekDesk& m_week;
    FigureDesk& m_figures;
    HouseProgress m_progress;
    Money m_crewRate;
    QLabel* m_summary;
    TableModelBase* m_model = nullptr;
    DataTable* m_table = nullptr;
    LinePicture* m_picture;
    bool m_stale = false; ///< units have been hung while nobody looked
};

} // namespace miterbook
