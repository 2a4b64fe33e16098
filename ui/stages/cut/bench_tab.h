// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <QWidget>

class QComboBox;
class QHBoxLayout;
class QLabel;

namespace miterbook {

class CutDesk;
class FigureView;

/// Settings of saw and bench, and what follows from them: the two ways of joining side by side,
/// what moisture will do to a miter, what walking can be said of.
class BenchTab final : public QWidget {
    Q_OBJECT
public:
    explicit BenchTab(CutDesk& cut, QWidget* parent = nullptr);

    QString moisture() const;
    QString walking() const;
    FigureView& joining() const { return *m_joining; }
    QComboBox& labelSheets() const { return *m_sheets; }

private:
    QHBoxLayout* labelSheetLine();
    void showLabelSheet();
    void takeLabelSheet(int choice);
    void refresh();
    void sayMoisture();
    void sayWalking();

    CutDesk& m_cut;
    FigureView* m_joining;
    QComboBox* m_sheets;
    QLabel* m_moisture;
    QLabel* m_walking;
};

} // namespace miterbook
