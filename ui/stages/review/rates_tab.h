// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "job/rate_review.h"

#include <QWidget>

class QLabel;
class QPushButton;

namespace miterbook {

class FigureView;
class LinePicture;
class ReviewDesk;

/// Each labour rate of the book against what finished houses say of it, with its trend; a learned
/// rate is taken into the book by one deliberate click.
class RatesTab final : public QWidget {
    Q_OBJECT
public:
    explicit RatesTab(ReviewDesk& review, QWidget* parent = nullptr);

    FigureView& view() const { return *m_view; }
    LinePicture& picture() const { return *m_picture; }
    /// Makes a task's rate the current one.
    void choose(Task task);

public Q_SLOTS:
    void accept();

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refresh();
    void showCurrent();
    const TaskRate* current();
    LengthUnit written() const;

    ReviewDesk& m_review;
    FigureView* m_view;
    FigureView* m_apart;
    QLabel* m_said;
    QPushButton* m_accept;
    LinePicture* m_picture;
    bool m_stale = true;
};

} // namespace miterbook
