// SPDX-License-Identifier: GPL-3.0-or-later
#include "printing/export_paper.h"

#include "papers/write_paper.h"
#include "printing/pdf.h"
#include "printing/printable_text.h"
#include "widgets/question.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QSaveFile>

namespace miterbook {

namespace {

Error cannotWrite(const QString& path, const QString& why) {
    return {
        Fault::storage, "Could not write " + path.toStdString() + ": " + why.toStdString() + "."};
}

/// A file name of the paper's footer without what file systems refuse.
QString suggestedName(const Paper& paper) {
    QString name;
    for (const QChar c : printable(paper.footer.empty() ? paper.title : paper.footer))
        name += c.isLetterOrNumber() || c == QLatin1Char('-') ? c : QLatin1Char(' ');
    name = name.simplified().left(80);
    return (name.isEmpty() ? QStringLiteral("paper") : name) + QStringLiteral(".pdf");
}

} // namespace

Result<void> writeWholeFile(const QString& path, const QByteArray& bytes) {
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly))
        return cannotWrite(path, file.errorString());
    if (file.write(bytes) != bytes.size() || !file.commit())
        return cannotWrite(path, file.errorString());
    return {};
}

Result<void> exportPaper(
    const Paper& paper, PageSize size, const QString& path, const PaperBelow& below) {
    const QString ending = QFileInfo(path).suffix().toLower();
    if (ending == QLatin1String("pdf"))
        return writePdf(paper, size, path, below);
    if (ending == QLatin1String("csv"))
        return writeWholeFile(path, QByteArray::fromStdString(paperCsv(paper)));
    if (ending == QLatin1String("json"))
        return writeWholeFile(path, QByteArray::fromStdString(paperJson(paper)));
    if (ending == QLatin1String("txt"))
        return writeWholeFile(path, QByteArray::fromStdString(paperText(paper)));
    return badInput("\"" + path.toStdString()
        + "\" does not say what to write: end it with .pdf, .csv, .json or .txt.");
}

void savePaperAs(QWidget* parent, const Paper& paper, PageSize size, const PaperBelow& below) {
    QFileDialog dialog(parent, QStringLiteral("Save paper"));
    dialog.setAcceptMode(QFileDialog::AcceptSave);
    dialog.setNameFilters({QStringLiteral("PDF (*.pdf)"), QStringLiteral("CSV, tables (*.csv)"),
        QStringLiteral("JSON, tables (*.json)"), QStringLiteral("Text (*.txt)")});
    dialog.setDefaultSuffix(QStringLiteral("pdf"));
    QObject::connect(&dialog, &QFileDialog::filterSelected, &dialog, [&](const QString& filter) {
        const qsizetype from = filter.indexOf(QLatin1String("(*.")) + 3;
        dialog.setDefaultSuffix(filter.mid(from, filter.size() - from - 1));
    });
    dialog.selectFile(suggestedName(paper));
    if (dialog.exec() != QDialog::Accepted || dialog.selectedFiles().isEmpty())
        return;
    const Result<void> written = exportPaper(
        paper, size, dialog.selectedFiles().constFirst(), below);
    if (!written)
        showPaperError(parent, written.error());
}

void showPaperError(QWidget* parent, const Error& error) {
    tell(parent,
        {QString::fromStdString(error.sentence), {}, {}, QObject::tr("The paper was not made")});
}

} // namespace miterbook
