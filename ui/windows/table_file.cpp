// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/table_file.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "io/file_bytes.h"
#include "printing/export_paper.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/question.h"
#include "widgets/table_panel.h"
#include "windows/table_csv.h"

#include <QDir>
#include <QFileDialog>
#include <QFileInfo>
#include <QMenu>
#include <QPushButton>

namespace miterbook {

namespace {

QString csvFiles() {
    return QObject::tr("Tables (*.csv *.txt *.tsv);;All files (*)");
}

void saveRows(TablePanel& panel) {
    const TableModelBase& model = panel.table().cells();
    const QString path = QFileDialog::getSaveFileName(panel.window(),
        QObject::tr("Save %1 as CSV").arg(model.name().toLower()),
        QDir::home().filePath(model.name().toLower() + QStringLiteral(".csv")), csvFiles());
    if (path.isEmpty())
        return;
    if (auto written = writeWholeFile(path, QByteArray::fromStdString(tableCsv(model))); !written)
        model.desk().refuse(written.error());
}

void bringRows(TablePanel& panel) {
    TableModelBase& model = panel.table().cells();
    const QString path = QFileDialog::getOpenFileName(panel.window(),
        QObject::tr("Bring in %1").arg(model.name().toLower()), QDir::homePath(), csvFiles());
    if (path.isEmpty())
        return;
    if (const QString said = bringTableFile(model, path); !said.isEmpty())
        tell(panel.window(), {said});
}

QString summary(const QString& file, const BroughtIn& brought) {
    QString said
        = QObject::tr("%1: %2 added, %3 changed, %4 as they were.")
              .arg(file, counted(brought.added, QObject::tr("1 row"), QObject::tr("%1 rows")))
              .arg(brought.changed)
              .arg(brought.same);
    if (brought.added + brought.changed > 0)
        said += QLatin1Char(' ') + QObject::tr("Undo takes it back.");
    for (const QString& title : brought.notUnderstood)
        said += QLatin1Char(' ') + QObject::tr("The column \"%1\" was left out.").arg(title);
    return said;
}

} // namespace

QString bringTableFile(TableModelBase& model, const QString& path) {
    const auto bytes = readFileBytes(utf8(path));
    if (!bytes) {
        model.desk().refuse(bytes.error());
        return {};
    }
    const auto brought = bringTableCsv(model, *bytes);
    return brought ? summary(QFileInfo(path).fileName(), *brought) : QString();
}

QPushButton* addFileButton(TablePanel& panel) {
    auto* button = new QPushButton;
    button->setText(QObject::tr("CSV file"));
    button->setAccessibleName(QObject::tr("CSV file of %1").arg(panel.table().cells().name()));
    button->setAutoDefault(false);
    auto* menu = new QMenu(button);
    menu->addAction(
        QObject::tr("&Save these rows as CSV\u2026"), &panel, [&panel] { saveRows(panel); });
    menu->addAction(
        QObject::tr("&Bring in rows from CSV\u2026"), &panel, [&panel] { bringRows(panel); });
    button->setMenu(menu);
    panel.addBeside(button);
    return button;
}

} // namespace miterbook
