// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/pay_sheet.h"

#include <QWidget>

class QLabel;

namespace miterbook {

class FigureView;
class WeekDesk;

/// What the week's hours and pieces come to for each of the crew, and by which rules.
class PayTab final : public QWidget {
    Q_OBJECT
public:
    explicit PayTab(WeekDesk& week, QWidget* parent = nullptr);

    const PaySheet& sheet() const { return m_sheet; }
    QString problems() const;

private:
    void refresh();

    WeekDesk& m_week;
    PaySheet m_sheet;
    FigureView* m_view;
    QLabel* m_problems;
};

} // namespace miterbook
