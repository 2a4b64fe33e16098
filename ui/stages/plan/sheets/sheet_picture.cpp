// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/sheets/sheet_page.h"

#include <QBuffer>
#include <QImageReader>
#include <QPainter>

namespace miterbook {

namespace {

/// A picture and its halves, so that a small view need not read all dots.
class PicturePage final : public SheetPage {
public:
    explicit PicturePage(QImage image)
        : m_size(image.size()) {
        if (image.dotsPerMeterX() > 0)
            m_dot = Length::millimetres(1000) / image.dotsPerMeterX();
        constexpr int smallest = 512;
        m_levels.push_back(std::move(image));
        while (std::max(m_levels.back().width(), m_levels.back().height()) > smallest * 2) {
            const QSize half = m_levels.back().size() / 2;
            m_levels.push_back(m_levels.back()
                                   .scaled(half.expandedTo({1, 1}), Qt::IgnoreAspectRatio,
                                       Qt::SmoothTransformation)
                                   .convertToFormat(m_levels.front().format()));
        }
    }

    QSizeF size() const override { return m_size; }
    Length unitOnPaper() const override { return m_dot; }

    QImage draw(
        const QRectF& units, QSize pixels, const std::function<bool()>& stop) const override {
        if (stop && stop())
            return {};
        std::size_t level = 0;
        double shrink = 1;
        while (level + 1 < m_levels.size() && units.width() / shrink >= 2.0 * pixels.width()) {
            ++level;
            shrink *= 2;
        }
        QImage image(pixels, QImage::Format_ARGB32_Premultiplied);
        image.fill(Qt::transparent);
        QPainter painter(&image);
        painter.setRenderHint(
            QPainter::SmoothPixmapTransform, units.width() > pixels.width() / 4.0);
        const QImage& from = m_levels[level];
        const double x = from.width() / m_size.width();
        const double y = from.height() / m_size.height();
        painter.drawImage(QRectF(QPointF(), pixels), from,
            QRectF(units.left() * x, units.top() * y, units.width() * x, units.height() * y));
        return image;
    }

private:
    QSizeF m_size;
    Length m_dot; ///< as the file says; zero where it does not
    std::vector<QImage> m_levels;
};

} // namespace

Result<OpenedSheet> openPicture(const std::string& content) {
    QByteArray bytes = QByteArray::fromRawData(
        content.data(), static_cast<qsizetype>(content.size()));
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer);
    reader.setDecideFormatFromContent(true);
    const QByteArray format = reader.format();
    if (format != "png" && format != "jpeg")
        return badInput("is no PDF, PNG, JPEG or DXF.");
    const QSize size = reader.size();
    if (qint64(size.width()) * size.height() > mostDots)
        return badInput("has " + std::to_string(size.width()) + " x "
            + std::to_string(size.height())
            + " dots; pictures of up to 40 million dots are taken: save it smaller, or as a PDF.");
    reader.setAutoTransform(true);
    QImage image = reader.read();
    if (image.isNull())
        return badInput("is a broken picture; ask for it again or save it anew.");
    if (!image.hasAlphaChannel())
        image.convertTo(QImage::Format_RGB16); // half the memory; a drawing needs no more
    return OpenedSheet{std::make_shared<const PicturePage>(std::move(image)), 1};
}

} // namespace miterbook
