// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "review/comparison.h"

#include <QWidget>

class QComboBox;
class QLabel;

namespace miterbook {

class BarPicture;
class FigureView;
class ReviewDesk;

/// Finished houses by plan, builder or year, side by side: a table and a picture.
class CompareTab final : public QWidget {
    Q_OBJECT
public:
    explicit CompareTab(ReviewDesk& review, QWidget* parent = nullptr);

    void compareBy(CompareBy by);
    FigureView& view() const { return *m_view; }
    BarPicture& picture() const { return *m_picture; }

protected:
    void showEvent(QShowEvent* event) override;

private:
    void refresh();

    ReviewDesk& m_review;
    QComboBox* m_by;
    QComboBox* m_what;
    QLabel* m_hint;
    FigureView* m_view;
    BarPicture* m_picture;
    bool m_stale = true; ///< reckoned when somebody looks
};

} // namespace miterbook
