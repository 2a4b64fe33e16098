// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/preview_dialog.h"

#include "printing/export_paper.h"
#include "printing/page_size.h"
#include "printing/printable_text.h"
#include "widgets/spoken_role.h"

#include <QAction>
#include <QComboBox>
#include <QGraphicsView>
#include <QLabel>
#include <QPrintDialog>
#include <QPrintPreviewWidget>
#include <QToolBar>
#include <QVBoxLayout>

namespace miterbook {

PreviewDialog::PreviewDialog(Paper paper, PageSize size, QWidget* parent, PaperBelow below)
    : QDialog(parent)
    , m_paper(std::move(paper))
    , m_below(std::move(below))
    , m_size(size)
    , m_printer(QPrinter::HighResolution)
    , m_preview(new QPrintPreviewWidget(&m_printer, this))
    , m_number(new QLabel(this)) {
    setWindowTitle(printable(m_paper.title));
    setSizeGripEnabled(true);
    m_printer.setDocName(printable(m_paper.footer.empty() ? m_paper.title : m_paper.footer));
    setPage(m_printer, m_size);
    m_preview->setAccessibleName(tr("Pages of the paper"));
    if (auto* pages = m_preview->findChild<QGraphicsView*>()) { // Qt's own, which has no name
        speakAs(*pages, QAccessible::Document);
        pages->setAccessibleName(m_preview->accessibleName());
    }
    m_number->setTextFormat(Qt::PlainText);

    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(makeTools());
    layout->addWidget(m_preview, 1);
    connect(m_preview, &QPrintPreviewWidget::paintRequested, this, &PreviewDialog::paintPreview);
    connect(m_preview, &QPrintPreviewWidget::previewChanged, this, &PreviewDialog::showPageNumber);
    m_preview->fitInView();
    resize(860, 920);
}

QToolBar* PreviewDialog::makeTools() {
    auto* bar = new QToolBar(tr("Preview"), this);
    bar->setToolButtonStyle(Qt::ToolButtonTextOnly);
    addTool(*bar, tr("&Print…"), QKeySequence::Print, &PreviewDialog::print);
    addTool(*bar, tr("&Save as…"), QKeySequence::Save, &PreviewDialog::save);
    bar->addSeparator();
    addTool(*bar, tr("Pre&vious page"), QKeySequence(Qt::Key_PageUp), &PreviewDialog::previousPage);
    addTool(*bar, tr("&Next page"), QKeySequence(Qt::Key_PageDown), &PreviewDialog::nextPage);
    bar->addWidget(m_number);
    bar->addSeparator();
    addTool(*bar, tr("&Whole page"), {}, &PreviewDialog::wholePage);
    addTool(*bar, tr("&Full width"), {}, &PreviewDialog::fullWidth);
    addTool(*bar, tr("Large&r"), QKeySequence::ZoomIn, &PreviewDialog::zoomIn);
    addTool(*bar, tr("S&maller"), QKeySequence::ZoomOut, &PreviewDialog::zoomOut);
    bar->addSeparator();
    bar->addWidget(makeSizes());
    return bar;
}

QAction* PreviewDialog::addTool(
    QToolBar& bar, const QString& text, const QKeySequence& keys, void (PreviewDialog::*act)()) {
    QAction* action = bar.addAction(text, this, act);
    action->setShortcut(keys);
    return action;
}

QComboBox* PreviewDialog::makeSizes() {
    auto* sizes = new QComboBox(this);
    sizes->setAccessibleName(tr("Page size"));
    for (const auto& entry : Words<PageSize>::list)
        sizes->addItem(printable(entry.text), static_cast<int>(entry.value));
    sizes->setCurrentIndex(sizes->findData(static_cast<int>(m_size)));
    connect(sizes, &QComboBox::currentIndexChanged, this, [this, sizes](int index) {
        takeSize(static_cast<PageSize>(sizes->itemData(index).toInt()));
    });
    return sizes;
}

void PreviewDialog::takeSize(PageSize size) {
    m_size = size;
    setPage(m_printer, m_size);
    m_preview->updatePreview();
}

void PreviewDialog::paintPreview(QPrinter* printer) {
    // Nothing is said when it fails: the pages stay white, and printing itself says why.
    (void)PaperPainter(m_paper, *printer, m_below).paint();
}

void PreviewDialog::print() {
    QPrintDialog dialog(&m_printer, this);
    dialog.setOption(QAbstractPrintDialog::PrintPageRange);
    dialog.setMinMax(1, m_preview->pageCount());
    const bool accepted = dialog.exec() == QDialog::Accepted;
    setPage(m_printer, m_size);
    if (!accepted)
        return;
    const bool some = m_printer.printRange() == QPrinter::PageRange;
    const PageRange range = some ? PageRange{m_printer.fromPage(), m_printer.toPage()}
                                 : PageRange{};
    const Result<void> printed = PaperPainter(m_paper, m_printer, m_below).paint(range);
    if (!printed)
        showPaperError(this, printed.error());
    m_preview->updatePreview();
}

void PreviewDialog::save() {
    savePaperAs(this, m_paper, m_size, m_below);
}

void PreviewDialog::previousPage() {
    m_preview->setCurrentPage(m_preview->currentPage() - 1);
    showPageNumber();
}

void PreviewDialog::nextPage() {
    m_preview->setCurrentPage(m_preview->currentPage() + 1);
    showPageNumber();
}

void PreviewDialog::zoomIn() {
    m_preview->zoomIn();
}

void PreviewDialog::zoomOut() {
    m_preview->zoomOut();
}

void PreviewDialog::wholePage() {
    m_preview->fitInView();
}

void PreviewDialog::fullWidth() {
    m_preview->fitToWidth();
}

void PreviewDialog::showPageNumber() {
    m_number->setText(
        tr("Page %1 of %2").arg(m_preview->currentPage()).arg(m_preview->pageCount()));
}

} // namespace miterbook
