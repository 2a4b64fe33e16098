// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/sheets/sheet_page.h"

namespace miterbook {

namespace {

/// How far into a file its mark may stand: some programs write a line before it.
constexpr std::size_t headBytes = 2048;

bool looksLikeDxf(std::string_view head) {
    // Group code 0, then SECTION, on lines of their own; comments (999) may stand before.
    const auto at = head.find("SECTION");
    return at != std::string_view::npos && head.find('\0') == std::string_view::npos;
}

Result<OpenedSheet> openByKind(const std::string& content, int page) {
    const std::string_view head = std::string_view(content).substr(0, headBytes);
    if (head.find("%PDF-") != std::string_view::npos)
        return openPdf(content, page);
    if (looksLikeDxf(head))
        return openDxf(content);
    return openPicture(content);
}

} // namespace

Result<OpenedSheet> openSheet(const std::string& name, const Bytes& content, int page) {
    auto opened = content.size() == 0 ? Result<OpenedSheet>(badInput("is empty."))
                                      : openByKind(content.content(), page);
    if (!opened)
        return badInput(name + " " + opened.error().sentence);
    const QSizeF size = opened->page->size();
    if (!(size.width() > 0) || !(size.height() > 0))
        return badInput(name + " has a page without a size.");
    return opened;
}

} // namespace miterbook
