// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/chart_picture.h"

#include "widgets/accent.h"
#include "widgets/plain_text.h"

#include <QAbstractAxis>
#include <QAction>
#include <QChart>
#include <QDir>
#include <QEvent>
#include <QFileDialog>
#include <QLegend>
#include <QPageLayout>
#include <QPdfWriter>

namespace miterbook {

namespace {

/// Chart titles are painted as rich text by Qt; a user's name must not be taken for mark-up.
QString plainTitle(const QString& title) {
    return title.toHtmlEscaped();
}

} // namespace

ChartPicture::ChartPicture(const QString& name, QWidget* parent)
    : QChartView(new QChart, parent) {
    setAccessibleName(name);
    setRenderHint(QPainter::Antialiasing);
    setFocusPolicy(Qt::StrongFocus);
    setContextMenuPolicy(Qt::ActionsContextMenu);
    auto* save = new QAction(tr("Save the picture as PDF\u2026"), this);
    connect(save, &QAction::triggered, this, &ChartPicture::saveAs);
    addAction(save);
    chart()->setBackgroundRoundness(0);
    chart()->legend()->setAlignment(Qt::AlignBottom);
    chart()->legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
    setMinimumHeight(fontMetrics().height() * 18);
    dress();
}

QColor ChartPicture::ink() const {
    return palette().color(QPalette::Text);
}

QColor ChartPicture::accent() const {
    return accentColour(palette());
}

void ChartPicture::clear() {
    chart()->removeAllSeries();
    for (QAbstractAxis* axis : chart()->axes()) {
        chart()->removeAxis(axis);
        delete axis;
    }
}

void ChartPicture::finish(const QString& title, const QString& words) {
    chart()->setTitle(plainTitle(title));
    setAccessibleDescription(words);
    setToolTip(safeTip(words));
    dress();
}

void ChartPicture::dress() {
    chart()->setBackgroundBrush(palette().brush(QPalette::Base));
    chart()->setTitleBrush(ink());
    QFont bold = font();
    bold.setBold(true);
    chart()->setTitleFont(bold);
    chart()->legend()->setLabelColor(ink());
    chart()->legend()->setFont(font());
    QColor grid = ink();
    grid.setAlphaF(0.2F);
    for (QAbstractAxis* axis : chart()->axes()) {
        axis->setLabelsColor(ink());
        axis->setTitleBrush(ink());
        axis->setLabelsFont(font());
        axis->setTitleFont(font());
        axis->setLinePenColor(ink());
        axis->setGridLineColor(grid);
    }
}

void ChartPicture::changeEvent(QEvent* event) {
    QChartView::changeEvent(event);
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange)
        dress();
}

bool ChartPicture::savePdf(const QString& path) {
    QPdfWriter writer(path);
    writer.setPageOrientation(QPageLayout::Landscape);
    writer.setResolution(300);
    QPainter painter;
    if (!painter.begin(&writer))
        return false;
    render(&painter, QRectF(0, 0, writer.width(), writer.height()), rect(), Qt::KeepAspectRatio);
    return painter.end();
}

void ChartPicture::saveAs() {
    const QString path = QFileDialog::getSaveFileName(window(), tr("Save the picture"),
        QDir::homePath() + QStringLiteral("/picture.pdf"), tr("PDF (*.pdf)"));
    if (!path.isEmpty())
        savePdf(path);
}

} // namespace miterbook
