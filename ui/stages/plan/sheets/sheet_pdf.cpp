// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/sheets/sheet_page.h"

#include <poppler-qt6.h>

#include <QVariant>

#include <cmath>

namespace miterbook {

namespace {

constexpr double pointsToInch = 72;
constexpr double largestSide = 100'000; // points: 115 ft of paper

using PopplerStop = const std::function<bool()>*;

/// Poppler asks between drawing operations whether to go on.
bool shallStop(const QVariant& payload) {
    return (*static_cast<PopplerStop>(payload.value<void*>()))();
}

class PdfPage final : public SheetPage {
public:
    PdfPage(std::unique_ptr<Poppler::Document> document, std::unique_ptr<Poppler::Page> page)
        : m_document(std::move(document))
        , m_page(std::move(page)) {}

    QSizeF size() const override { return m_page->pageSizeF(); }
    Length unitOnPaper() const override { return Length::inches(1) / 72; }

    QImage draw(
        const QRectF& units, QSize pixels, const std::function<bool()>& stop) const override {
        const double across = pixels.width() / units.width();
        const double down = pixels.height() / units.height();
        const QVariant payload = QVariant::fromValue(
            const_cast<void*>(static_cast<const void*>(&stop))); // only read in shallStop
        return m_page->renderToImage(across * pointsToInch, down * pointsToInch,
            static_cast<int>(std::lround(units.left() * across)),
            static_cast<int>(std::lround(units.top() * down)), pixels.width(), pixels.height(),
            Poppler::Page::Rotate0, nullptr, nullptr, stop ? shallStop : nullptr, payload);
    }

private:
    std::unique_ptr<Poppler::Document> m_document; // outlives its page
    std::unique_ptr<Poppler::Page> m_page;
};

void saysNothing(const QString&, const QVariant&) {
}

} // namespace

Result<OpenedSheet> openPdf(const std::string& content, int page) {
    Poppler::setDebugErrorFunction(saysNothing, QVariant()); // broken files are said in a sentence
    auto document = Poppler::Document::loadFromData(
        QByteArray(content.data(), static_cast<qsizetype>(content.size())));
    if (!document)
        return badInput("is a broken PDF; ask for it again or save it anew.");
    if (document->isLocked())
        return badInput("is locked with a password; save a copy without one.");
    const int pages = document->numPages();
    if (pages < 1)
        return badInput("is a PDF without pages.");
    if (page < 1 || page > pages)
        return badInput(
            "has no page " + std::to_string(page) + "; it has " + std::to_string(pages) + ".");
    document->setRenderHint(Poppler::Document::Antialiasing);
    document->setRenderHint(Poppler::Document::TextAntialiasing);
    auto sheet = document->page(page - 1);
    if (!sheet)
        return badInput("has a broken page " + std::to_string(page) + ".");
    const QSizeF size = sheet->pageSizeF();
    if (!(size.width() <= largestSide && size.height() <= largestSide))
        return badInput("has a page too large to be a sheet.");
    return OpenedSheet{
        std::make_shared<const PdfPage>(std::move(document), std::move(sheet)), pages};
}

} // namespace miterbook
