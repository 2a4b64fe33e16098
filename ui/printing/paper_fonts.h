// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/result.h"
#include "papers/paper.h"
#include "printing/page_marks.h"

#include <QFont>
#include <QFontMetricsF>
#include <QStringList>

#include <vector>

class QPagedPaintDevice;

namespace miterbook {

/// The one family of our papers in the sizes it is set in, measured for one device. All measures
/// are in dots of the device.
class PaperFonts {
public:
    PaperFonts(Paper::Type type, QPagedPaintDevice& device);

    /// Error where the machine has no font to print with: a page would come out empty.
    static Result<void> check();

    const QFont& font(TextRole role) const { return face(role).font; }
    double width(TextRole role, const QString& text) const {
        return face(role).metrics.horizontalAdvance(text);
    }
    /// Baseline to baseline.
    double lineHeight(TextRole role) const { return face(role).lineHeight; }
    /// Top of a line to its baseline.
    double ascent(TextRole role) const { return face(role).ascent; }
    QStringList wrap(TextRole role, const QString& text, double width) const;
    /// So many points of an office paper; more on one for the wall.
    double points(double count) const { return count * m_dotsPerPoint; }
    /// Where printing begins inside the margins, from the sheet's corner.
    QPointF pageCorner() const;
    /// Thickness of a line: the same on every paper.
    double hairline() const { return 0.35 * m_dotsPerPlainPoint; }

private:
    struct Face {
        QFont font;
        QFontMetricsF metrics;
        double lineHeight;
        double ascent;
    };
    const Face& face(TextRole role) const { return m_faces[static_cast<std::size_t>(role)]; }

    QPagedPaintDevice& m_device;
    double m_dotsPerPlainPoint;
    double m_dotsPerPoint;
    std::vector<Face> m_faces;
};

} // namespace miterbook
