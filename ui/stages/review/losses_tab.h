// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

namespace miterbook {

class FigureView;
class ReviewDesk;

/// Which piece of work of which plan loses money.
class LossesTab final : public QWidget {
    Q_OBJECT
public:
    explicit LossesTab(ReviewDesk& review, QWidget* parent = nullptr);

    FigureView& view() const { return *m_view; }

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refresh();

    ReviewDesk& m_review;
    FigureView* m_view;
};

} // namespace miterbook
