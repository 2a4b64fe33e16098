// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QLabel;

namespace miterbook {

class FigureView;
class ReviewDesk;

/// What the house on the screen came to by piece of work: bid against actual.
class HouseTab final : public QWidget {
    Q_OBJECT
public:
    explicit HouseTab(ReviewDesk& review, QWidget* parent = nullptr);

    FigureView& view() const { return *m_view; }
    QString summary() const;

private:
    void refresh();

    ReviewDesk& m_review;
    QLabel* m_summary;
    FigureView* m_view;
};

} // namespace miterbook
