// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/pdf.h"

#include "printing/export_paper.h"
#include "printing/page_size.h"
#include "printing/printable_text.h"

#include <QBuffer>
#include <QPdfWriter>

namespace miterbook {

Result<QByteArray> paperPdf(const Paper& paper, PageSize size, const PaperBelow& below) {
    QByteArray bytes;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::WriteOnly);
    QPdfWriter writer(&buffer);
    writer.setTitle(printable(paper.footer.empty() ? paper.title : paper.footer));
    writer.setCreator(QStringLiteral("Miterbook"));
    setPage(writer, size);
    const Result<void> painted = PaperPainter(paper, writer, below).paint();
    if (!painted)
        return painted.error();
    return bytes;
}

Result<void> writePdf(
    const Paper& paper, PageSize size, const QString& path, const PaperBelow& below) {
    const Result<QByteArray> bytes = paperPdf(paper, size, below);
    return bytes ? writeWholeFile(path, *bytes) : Result<void>(bytes.error());
}

} // namespace miterbook
