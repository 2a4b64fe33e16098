// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/hours_dialog.h"

#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "hours/done_units.h"
#include "io/file_bytes.h"
#include "io/hours_edit.h"
#include "stages/hours/week_columns.h"
#include "widgets/plain_text.h"

#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

namespace {

FigureRow goodRow(const TimeEntry& entry, const Book& book, const QString& standing) {
    const LengthUnit written = book.prices.shop().unit;
    const QString what = whatText(entry.work, entry.task, entry.kind, written);
    const QString person = personText(entry.person, book);
    const QString house = houseText(entry.house, book);
    return {{wordCell(isoDate(entry.date)), {person, {}}, {house, {}}, {what, {}},
                hoursCell(entry.time),
                quantityCell(amountSaid(entry.done, doneUnit(entry), written)), {standing, {}}},
        {}, false};
}

} // namespace

HoursDialog::HoursDialog(Desk& desk, QWidget* parent)
    : QDialog(parent)
    , m_desk(desk)
    , m_message(plainLabel(
          tr("Choose a file of hours: a row of titles with date, who, house, what and hours, and "
             "perhaps units finished and a note.")))
    , m_good(new FigureView(tr("Good rows"),
          {tr("Date"), tr("Who"), tr("House"), tr("What"), tr("Hours"), tr("Finished"), tr("Row")}))
    , m_rejected(new FigureView(tr("Rejected rows"), {tr("Line"), tr("Column"), tr("Why")}))
    , m_bring(new QPushButton) {
    setWindowTitle(tr("Bring in hours"));
    auto* choose = new QPushButton(tr("Choose a &file\u2026"));
    connect(choose, &QPushButton::clicked, this, &HoursDialog::chooseFile);
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(m_good);
    split->addWidget(m_rejected);
    split->setStretchFactor(0, 2);
    split->setStretchFactor(1, 1);
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(m_bring, QDialogButtonBox::AcceptRole);
    QPushButton* none = buttons->addButton(tr("Bring in none"), QDialogButtonBox::RejectRole);
    connect(m_bring, &QPushButton::clicked, this, &HoursDialog::bringIn);
    connect(none, &QPushButton::clicked, this, &QDialog::reject);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(choose, 0, Qt::AlignLeft);
    layout->addWidget(m_message);
    layout->addWidget(split, 1);
    layout->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 110, fontMetrics().height() * 34);
    showReading();
}

QString HoursDialog::message() const {
    return m_message->text();
}

void HoursDialog::chooseFile() {
    const QString path = QFileDialog::getOpenFileName(this, windowTitle(),
        m_path.isEmpty() ? QDir::homePath() : QFileInfo(m_path).path(),
        tr("Hours (*.csv *.txt *.tsv);;All files (*)"));
    if (!path.isEmpty())
        readFile(path);
}

bool HoursDialog::readFile(const QString& path) {
    m_path = path;
    m_reading.reset();
    const auto bytes = readFileBytes(utf8(path));
    if (!bytes) {
        showReading();
        m_message->setText(text(bytes.error().sentence));
        return false;
    }
    const auto open = [this](Date first, Date last) -> Result<void> {
        return m_desk.openDays(first, last)
            ? Result<void>()
            : Error{Fault::storage, "The hours of those days could not be read from the book."};
    };
    auto reading = readHoursAgainst(*bytes, m_desk.book(), m_desk.clock().today(), open);
    if (reading)
        m_reading = std::move(*reading);
    showReading();
    if (!m_reading)
        m_message->setText(text(reading.error().sentence));
    return m_reading.has_value();
}

void HoursDialog::showReading() {
    const auto good = m_reading ? qsizetype(m_reading->rows.size()) : 0;
    m_bring->setText(counted(good, tr("Bring in 1 good row"), tr("Bring in %1 good rows")));
    m_bring->setEnabled(good > 0);
    std::vector<FigureRow> rows;
    std::vector<FigureRow> rejected;
    if (m_reading) {
        for (const TimeEntry& entry : m_reading->rows)
            rows.push_back(goodRow(entry, m_desk.book(), tr("new")));
        for (const TimeEntry& entry : m_reading->known)
            rows.push_back(goodRow(entry, m_desk.book(), tr("in the book already")));
        for (const HoursRejection& rejection : m_reading->rejected) {
            rejected.push_back({{countCell(rejection.line), wordCell(rejection.column),
                                    wordCell(rejection.reason)},
                {}, false});
        }
        QString said = QFileInfo(m_path).fileName() + QStringLiteral(": ")
            + tr("%1 good, %2 in the book already, %3 rejected.")
                  .arg(good)
                  .arg(m_reading->known.size())
                  .arg(m_reading->rejectedRows());
        for (const std::string& title : m_reading->unmapped)
            said += QLatin1Char(' ') + tr("The column \"%1\" was not understood.").arg(text(title));
        m_message->setText(said);
    }
    m_good->setRows(std::move(rows));
    m_rejected->setRows(std::move(rejected));
}

void HoursDialog::bringIn() {
    if (!m_reading)
        return;
    const std::string file = utf8(QFileInfo(m_path).fileName());
    if (m_desk.perform(hoursEdit(m_desk.book(), m_desk.ids(), *m_reading, file)))
        accept();
}

} // namespace miterbook
