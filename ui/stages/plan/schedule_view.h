// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "io/schedule_reading.h"

#include <QTabWidget>

namespace miterbook {

class FigureView;

/// A schedule as it was read: its good rows, what was rejected with line, column and reason, and
/// what else is to be known.
class ScheduleView final : public QTabWidget {
    Q_OBJECT
public:
    explicit ScheduleView(QWidget* parent = nullptr);

    void showReading(const ScheduleReading& reading, const Book& book);
    void clear();

private:
    FigureView* m_good;
    FigureView* m_rejected;
    FigureView* m_remarks;
};

} // namespace miterbook
