// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/paper_fonts.h"

#include "printing/printable_text.h"

#include <QFontDatabase>
#include <QPageLayout>
#include <QPagedPaintDevice>

#include <array>

namespace miterbook {

namespace {

/// Read from two paces, half as large again and a little more.
constexpr double wallScale = 1.6;

struct RoleSize {
    double points;
    bool bold;
    double leading;    ///< baseline to baseline, of the size
    bool grows = true; ///< on a paper for the wall
};

/// In the order of TextRole.
constexpr std::array<RoleSize, 7> sizes{{
    {8.5, false, 1.36},        // body
    {8.5, true, 1.36},         // bold
    {7.0, false, 1.36},        // small
    {7.0, true, 1.36},         // smallBold
    {10.5, true, 1.3},         // heading
    {13.0, true, 1.25, false}, // shop
    {20.0, false, 1.2, false}, // title
}};

/// The desktop's plain sans; the font engine knows its way to one that is there.
QFont sansFont() {
    QFont font(QStringLiteral("sans-serif"));
    font.setStyleHint(QFont::SansSerif);
    // The font engine joins no letters where they are spaced, so that text found or copied in a PDF
    // is what was written ("office", not "o" and a joined sign). A fiftieth of a dot is not seen,
    // and is the least that is not rounded away.
    font.setLetterSpacing(QFont::AbsoluteSpacing, 0.02);
    return font;
}

} // namespace

PaperFonts::PaperFonts(Paper::Type type, QPagedPaintDevice& device)
    : m_device(device)
    , m_dotsPerPlainPoint(device.logicalDpiY() / 72.0)
    , m_dotsPerPoint(m_dotsPerPlainPoint * (type == Paper::Type::wall ? wallScale : 1.0)) {
    for (const RoleSize& size : sizes) {
        const double dots = size.grows ? m_dotsPerPoint : m_dotsPerPlainPoint;
        QFont font = sansFont();
        font.setPointSizeF(size.points * dots / m_dotsPerPlainPoint);
        font.setBold(size.bold);
        const QFontMetricsF metrics(font, &device);
        const double lineHeight = dots * size.points * size.leading;
        const double ascent = metrics.ascent()
            + (lineHeight - metrics.ascent() - metrics.descent()) / 2;
        m_faces.push_back({font, metrics, lineHeight, ascent});
    }
}

Result<void> PaperFonts::check() {
    const bool any = !QFontDatabase::families().isEmpty();
    if (any && QFontMetricsF(sansFont()).inFont(QLatin1Char('A')))
        return {};
    return Error{Fault::notFound,
        "This machine has no font to print with; install one, such as the DejaVu fonts."};
}

QPointF PaperFonts::pageCorner() const {
    return m_device.pageLayout().paintRectPixels(m_device.logicalDpiX()).topLeft();
}

QStringList PaperFonts::wrap(TextRole role, const QString& text, double width) const {
    return wrapText(text, font(role), face(role).metrics, &m_device, width);
}

} // namespace miterbook
