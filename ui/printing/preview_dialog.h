// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "book/shop.h"
#include "papers/paper.h"
#include "printing/paper_painter.h"

#include <QDialog>
#include <QPrinter>

class QAction;
class QComboBox;
class QLabel;
class QPrintPreviewWidget;
class QToolBar;

namespace miterbook {

/// A paper on the screen, page by page. Made of Qt's preview widget rather than its preview dialog,
/// which has no place to set the page again after the print dialog has brought in the printer's
/// own.
class PreviewDialog : public QDialog {
    Q_OBJECT
public:
    PreviewDialog(Paper paper, PageSize size, QWidget* parent = nullptr, PaperBelow below = {});

    PageSize pageSize() const { return m_size; }

private:
    QToolBar* makeTools();
    QAction* addTool(
        QToolBar& bar, const QString& text, const QKeySequence& keys, void (PreviewDialog::*act)());
    QComboBox* makeSizes();
    void takeSize(PageSize size);
    void paintPreview(QPrinter* printer);
    void print();
    void save();
    void previousPage();
    void nextPage();
    void zoomIn();
    void zoomOut();
    void wholePage();
    void fullWidth();
    void showPageNumber();

    Paper m_paper;
    PaperBelow m_below;
    PageSize m_size;
    QPrinter m_printer;
    QPrintPreviewWidget* m_preview;
    QLabel* m_number;
};

} // namespace miterbook
