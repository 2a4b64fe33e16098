// SPDX-License-Identifier: GPL-3.0-or-later
#include "charts/chart_picture.h"

#include "basics/quote.h"
#include "desk/text.h"
#include "papers/picture_paper.h"
#include "printing/pdf.h"
#include "printing/preview.h"
#include "widgets/accent.h"
#include "widgets/plain_text.h"
#include "widgets/spoken_role.h"

#include <QAbstractAxis>
#include <QAction>
#include <QChart>
#include <QEvent>
#include <QGraphicsLayout>
#include <QGraphicsScene>
#include <QLegend>
#include <QLegendMarker>
#include <QToolButton>

namespace miterbook {

namespace {

/// Chart titles are painted as rich text by Qt; a user's name must not be taken for mark-up.
QString plainTitle(const QString& title) {
    return title.toHtmlEscaped();
}

} // namespace

ChartPicture::ChartPicture(const QString& name, QWidget* parent)
    : QChartView(new QChart, parent)
    , m_print(new QToolButton(this)) {
    speakAs(*this, QAccessible::Chart);
    setAccessibleName(name);
    setRenderHint(QPainter::Antialiasing);
    setFocusPolicy(Qt::StrongFocus);
    setContextMenuPolicy(Qt::ActionsContextMenu);
    auto* print = new QAction(tr("Print\u2026"), this);
    print->setToolTip(tr("Print this picture, or save it as PDF"));
    connect(print, &QAction::triggered, this, &ChartPicture::preview);
    addAction(print);
    print->setVisible(false);
    m_print->setDefaultAction(print);
    m_print->setToolButtonStyle(Qt::ToolButtonTextOnly);
    m_print->setAccessibleName(tr("Print: %1").arg(name));
    m_print->hide();
    chart()->setBackgroundRoundness(0);
    chart()->legend()->setAlignment(Qt::AlignBottom);
    chart()->legend()->setMarkerShape(QLegend::MarkerShapeFromSeries);
    setMinimumHeight(fontMetrics().height() * 18);
    dress();
}

void ChartPicture::printFor(std::function<PaperJob()> job) {
    m_job = std::move(job);
    m_print->defaultAction()->setVisible(bool(m_job));
    m_print->setVisible(bool(m_job));
    placeButton();
}

void ChartPicture::useInk() {
    m_inInk = true;
    dress();
}

QColor ChartPicture::ink() const {
    return m_inInk ? QColor(Qt::black) : palette().color(QPalette::Text);
}

QColor ChartPicture::accent() const {
    return m_inInk ? QColor(Qt::darkGray).darker() : accentColour(palette());
}

QColor ChartPicture::ground() const {
    return m_inInk ? QColor(Qt::white) : palette().color(QPalette::Base);
}

void ChartPicture::clear() {
    chart()->removeAllSeries();
    for (QAbstractAxis* axis : chart()->axes()) {
        chart()->removeAxis(axis);
        delete axis;
    }
}

void ChartPicture::finish(const QString& title, const QString& words) {
    m_title = title;
    if (!m_inInk) // a sheet has its own
        chart()->setTitle(plainTitle(title));
    setAccessibleDescription(words);
    setToolTip(safeTip(words));
    dress();
}

void ChartPicture::dress() {
    chart()->setBackgroundBrush(ground());
    chart()->setTitleBrush(ink());
    QFont bold = font();
    bold.setBold(true);
    chart()->setTitleFont(bold);
    chart()->legend()->setLabelColor(ink());
    chart()->legend()->setFont(font());
    for (QLegendMarker* marker : chart()->legend()->markers()) {
        // Of series without lines or dots Qt finds no shape, and then neither fills nor measures.
        if (marker->type() != QLegendMarker::LegendMarkerTypeXY)
            marker->setShape(QLegend::MarkerShapeRectangle);
    }
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

void ChartPicture::resizeEvent(QResizeEvent* event) {
    QChartView::resizeEvent(event);
    placeButton();
}

/// In the corner beside the title, where no picture has anything.
void ChartPicture::placeButton() {
    m_print->adjustSize();
    const int gap = fontMetrics().height() / 2;
    m_print->move(width() - m_print->width() - gap, gap);
}

void ChartPicture::paintOn(QPainter& painter, const QRectF& room) const {
    constexpr double highest = 0.66; // of its width
    const std::unique_ptr<ChartPicture> printed = inInk();
    // As many of the screen's dots as give the paper's type its size in points.
    const double perDot = double(painter.device()->logicalDpiX()) / logicalDpiX();
    const QSizeF size = QSizeF(room.width(), std::min(room.height(), room.width() * highest))
        / perDot;
    printed->resize(size.toSize());
    printed->chart()->resize(size);
    printed->chart()->layout()->activate();
    const QRectF target(room.topLeft(), size * perDot);
    printed->scene()->render(&painter, target, QRectF(QPointF(0, 0), size));
}

PaperBelow ChartPicture::onPaper() const {
    return [this](QPainter& painter, const QRectF& room) { paintOn(painter, room); };
}

/// What stands above the picture: its words without the title, which the paper has already.
Paper ChartPicture::sheet(const PaperJob& job) const {
    QString said = words();
    if (said.startsWith(m_title + QStringLiteral(". ")))
        said.remove(0, m_title.size() + 2);
    std::vector<std::string> lines;
    for (const QString& line : said.split(u'\n'))
        lines.push_back(utf8(line));
    return picturePaper(job, capitalised(utf8(m_title)), std::move(lines));
}

Result<void> ChartPicture::savePdf(const QString& path) const {
    if (!m_job)
        return badInput("There is nothing to print this picture for.");
    const PaperJob job = m_job();
    return writePdf(sheet(job), job.book.prices.shop().page, path, onPaper());
}

void ChartPicture::preview() {
    if (!m_job)
        return;
    const PaperJob job = m_job();
    previewPaper(window(), sheet(job), job.book.prices.shop().page, onPaper());
}

} // namespace miterbook
