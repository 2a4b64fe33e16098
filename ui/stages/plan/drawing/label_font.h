// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "stages/plan/variant_rows.h"

#include <QFont>
#include <QFontMetricsF>
#include <QHash>
#include <QStaticText>

#include <map>

class QPainter;
class QPaintDevice;

namespace miterbook {

/// A font of the drawing's labels and the lines that were written in it: shaping words takes longer
/// than all else that is drawn, so each line is shaped once and not again in every frame.
class LabelFont {
public:
    LabelFont(const QFont& font, const QPaintDevice* device);

    /// Of one line, in pixels.
    double width(const QString& line) const;
    double height() const { return m_metrics.height(); }
    /// Cut off so that it is no wider than that.
    QString elided(const QString& line, double width) const;
    /// Draws lines centred in a rectangle.
    void write(QPainter& painter, const QRectF& rect, const QString& text, const QColor& ink,
        QPointF off = {}) const;
    const QFont& font() const { return m_font; }

private:
    const QStaticText& shaped(const QString& line) const;

    QFont m_font;
    QFontMetricsF m_metrics;
    mutable QHash<QString, QStaticText> m_lines;
};

/// The fonts of a drawing's labels: bold ones for names, small ones for marks, each also for what
/// differs (slanted) and what is taken away (struck out), as in the tables.
class LabelFonts {
public:
    /// From the font of a widget, for what is painted on it.
    LabelFonts(const QFont& font, const QPaintDevice* device);

    const LabelFont& bold(RowMark mark = RowMark::plain) { return get(false, mark); }
    const LabelFont& small(RowMark mark = RowMark::plain) { return get(true, mark); }
    /// Whether they were made from this font.
    bool areOf(const QFont& font) const { return font == m_font; }

private:
    const LabelFont& get(bool small, RowMark mark);

    QFont m_font;
    const QPaintDevice* m_device;
    std::map<std::pair<bool, RowMark>, LabelFont> m_fonts;
};

} // namespace miterbook
