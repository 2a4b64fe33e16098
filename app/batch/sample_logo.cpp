// SPDX-License-Identifier: GPL-3.0-or-later
#include "batch/sample_logo.h"

#include "job/logo_edits.h"

#include <QBuffer>
#include <QImage>
#include <QPainter>
#include <QPainterPath>

namespace miterbook {

namespace {

/// Two casings that meet at 45 degrees, in black on nothing.
QByteArray corner() {
    QImage image(360, 360, QImage::Format_ARGB32);
    image.fill(Qt::transparent);
    QPainter painter(&image);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(QPen(Qt::black, 12, Qt::SolidLine, Qt::SquareCap, Qt::MiterJoin));
    const QPolygon head({{12, 12}, {348, 12}, {348, 112}, {112, 112}});
    const QPolygon leg({{12, 12}, {112, 112}, {112, 348}, {12, 348}});
    painter.setBrush(QColor(138, 74, 18));
    painter.drawPolygon(head);
    painter.setBrush(QColor(196, 143, 91));
    painter.drawPolygon(leg);
    painter.setPen(QPen(Qt::black, 6));
    for (const int in : {40, 66}) { // what is run into the face
        painter.drawLine(in, in, 348, in);
        painter.drawLine(in, in, in, 348);
    }
    painter.end();
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    image.save(&buffer, "PNG");
    return bytes;
}

} // namespace

Result<void> addSampleLogo(OpenedBook& opened) {
    if (opened.book().prices.shop().logo)
        return {};
    const auto edit = takeLogo(
        opened.book(), opened.workbook.ids(), "corner.png", "image/png", corner().toStdString());
    return edit ? opened.perform(*edit) : Result<void>(edit.error());
}

} // namespace miterbook
