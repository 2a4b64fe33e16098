// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "basics/bytes.h"
#include "basics/length.h"
#include "basics/result.h"

#include <QImage>
#include <QRectF>

#include <functional>
#include <memory>

namespace miterbook {

/// One page of a builder's sheet that has been read. Its units are points of a PDF, dots of a
/// picture, or drawing units of a DXF, y down. Drawn from one thread at a time.
class SheetPage {
public:
    virtual ~SheetPage() = default;
    /// In its units.
    virtual QSizeF size() const = 0;
    /// A part of the page, `units` wide and high, as an image of `pixels`; transparent where the
    /// sheet has nothing. Null when `stop` says so on the way or it cannot be drawn.
    virtual QImage draw(
        const QRectF& units, QSize pixels, const std::function<bool()>& stop) const = 0;
    /// What one unit is on the paper or in the house where the file says it: a point is 1/72 in on
    /// paper, a DXF may be drawn in inches of the house. Zero: not said.
    virtual Length unitOnPaper() const { return {}; }
    virtual Length unitInHouse() const { return {}; }
};

/// The most dots of a picture that are read; a sheet of 36 x 24 in at 200 dots to the inch has 35
/// million.
inline constexpr qint64 mostDots = 40'000'000;
/// The most lines of a DXF that are drawn.
inline constexpr std::size_t mostLines = 400'000;

struct OpenedSheet {
    std::shared_ptr<const SheetPage> page;
    int pages = 1;
};

/// Reads one page, from 1, of a file by what it holds, not by its name. Errors: one sentence that
/// begins with the file's name: what kind it is no file of, broken, locked, too large, no such
/// page.
Result<OpenedSheet> openSheet(const std::string& name, const Bytes& content, int page);

// By kind, for openSheet. The errors lack the name.
Result<OpenedSheet> openPdf(const std::string& content, int page);
Result<OpenedSheet> openPicture(const std::string& content);
Result<OpenedSheet> openDxf(const std::string& content);

} // namespace miterbook
