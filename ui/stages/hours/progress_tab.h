// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "hours/house_progress.h"

#include <QWidget>

class QLabel;

namespace miterbook {

class FigureDesk;
class FigureView;
class LinePicture;
class WeekDesk;

/// The house's hours against its bid by piece of work: how much is done, what it will come to, and
/// what that does to the profit.
class ProgressTab final : public QWidget {
    Q_OBJECT
public:
    ProgressTab(WeekDesk& week, FigureDesk& figures, QWidget* parent = nullptr);

    const HouseProgress& progress() const { return m_progress; }
    FigureView& view() const { return *m_view; }
    LinePicture& picture() const { return *m_picture; }
    QString summary() const;

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refresh();
    void say();
    void draw();

    WeekDesk& m_week;
    FigureDesk& m_figures;
    HouseProgress m_progress;
    QLabel* m_summary;
    FigureView* m_view;
    LinePicture* m_picture;
    bool m_stale = false; ///< units have been hung while nobody looked
};

} // namespace miterbook
