// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/schedule_dialog.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "io/file_bytes.h"
#include "io/schedule_edit.h"
#include "stages/plan/schedule_view.h"
#include "widgets/plain_text.h"

#include <QComboBox>
#include <QDialogButtonBox>
#include <QFileDialog>
#include <QFileInfo>
#include <QFormLayout>
#include <QLabel>
#include <QPushButton>
#include <QScrollArea>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

ScheduleDialog::ScheduleDialog(Desk& desk, ScheduleKind kind, Id<Plan> plan, QWidget* parent)
    : QDialog(parent)
    , m_desk(desk)
    , m_kind(kind)
    , m_target{plan, {}}
    , m_level(new QComboBox)
    , m_message(plainLabel(tr("Choose the schedule, exported as CSV from the plan set.")))
    , m_addLevels(new QPushButton)
    , m_view(new ScheduleView)
    , m_bring(new QPushButton) {
    setWindowTitle(tr("Bring in %1").arg(text(word(kind))));
    auto* choose = new QPushButton(tr("Choose a &file\u2026"));
    connect(choose, &QPushButton::clicked, this, &ScheduleDialog::chooseFile);
    auto* area = new QScrollArea;
    area->setWidgetResizable(true);
    area->setFocusPolicy(Qt::NoFocus);
    m_columns = new QWidget;
    m_mapping = new QFormLayout(m_columns);
    area->setWidget(m_columns);
    area->setAccessibleName(tr("What each column of the file means"));
    auto* split = new QSplitter;
    split->addWidget(area);
    split->addWidget(m_view);
    split->setStretchFactor(1, 1);
    split->setSizes({fontMetrics().averageCharWidth() * 46, fontMetrics().averageCharWidth() * 90});
    auto* buttons = new QDialogButtonBox;
    buttons->addButton(m_bring, QDialogButtonBox::AcceptRole);
    QPushButton* none = buttons->addButton(tr("Bring in none"), QDialogButtonBox::RejectRole);
    connect(m_bring, &QPushButton::clicked, this, &ScheduleDialog::bringIn);
    connect(none, &QPushButton::clicked, this, &QDialog::reject);
    connect(m_addLevels, &QPushButton::clicked, this, &ScheduleDialog::addLevels);
    connect(m_level, &QComboBox::activated, this, [this] {
        m_target.level = Id<Level>(m_level->currentData().toLongLong());
        read();
    });

    auto* top = new QHBoxLayout;
    auto* level = new QLabel(tr("&Level of rows that name none"));
    level->setBuddy(m_level);
    top->addWidget(choose);
    top->addStretch(1);
    top->addWidget(level);
    top->addWidget(m_level);
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(m_message);
    layout->addWidget(m_addLevels, 0, Qt::AlignLeft);
    layout->addWidget(split, 1);
    layout->addWidget(buttons);
    resize(fontMetrics().averageCharWidth() * 140, fontMetrics().height() * 34);
    fillLevels();
    showReading();
}

void ScheduleDialog::fillLevels() {
    m_level->clear();
    for (const auto& [id, level] : m_desk.book().sheet(m_target.plan).of<Level>()) {
        if (!level.variant && !level.removed)
            m_level->addItem(text(level.name), qlonglong(id.value()));
    }
    const int at = m_level->findData(qlonglong(m_target.level.value()));
    m_level->setCurrentIndex(std::max(0, at));
    m_target.level = Id<Level>(m_level->currentData().toLongLong());
}

void ScheduleDialog::chooseFile() {
    const QString path = QFileDialog::getOpenFileName(this, windowTitle(),
        m_path.isEmpty() ? QDir::homePath() : QFileInfo(m_path).path(),
        tr("Schedules (*.csv *.txt *.tsv);;All files (*)"));
    if (!path.isEmpty())
        readFile(path);
}

bool ScheduleDialog::readFile(const QString& path) {
    auto bytes = readFileBytes(utf8(path));
    if (!bytes) {
        m_message->setText(text(bytes.error().sentence));
        return false;
    }
    m_path = path;
    m_bytes = std::move(*bytes);
    m_choices.clear();
    read();
    fillColumns();
    return m_reading.has_value();
}

void ScheduleDialog::read() {
    if (m_path.isEmpty())
        return;
    auto reading = readSchedule(m_kind, m_bytes, m_desk.book(), m_target, m_choices);
    if (reading) {
        m_reading = std::move(*reading);
        showReading();
    } else {
        m_reading.reset();
        showReading();
        m_message->setText(text(reading.error().sentence));
    }
}

void ScheduleDialog::fillColumns() {
    while (m_mapping->rowCount() > 0)
        m_mapping->removeRow(0);
    if (!m_reading)
        return;
    for (const MappedHeader& header : m_reading->headers.headers) {
        auto* choice = new QComboBox;
        choice->addItem(tr("left out"), -1);
        for (const ScheduleColumn& column : columnsOf(m_kind))
            choice->addItem(text(word(column.field)), static_cast<int>(column.field));
        const int at = header.field ? choice->findData(static_cast<int>(*header.field)) : 0;
        choice->setCurrentIndex(std::max(0, at));
        const QString title = text(header.title);
        choice->setAccessibleName(tr("Column \"%1\" means").arg(title));
        connect(choice, &QComboBox::activated, this,
            [this, title, choice] { takeChoice(title, choice->currentData().toInt()); });
        m_mapping->addRow(plainLabel(title), choice);
    }
}

void ScheduleDialog::takeChoice(const QString& header, int field) {
    const std::string name = utf8(header);
    std::erase_if(m_choices, [&](const HeaderChoice& choice) { return choice.header == name; });
    HeaderChoice choice{name, std::nullopt};
    if (field >= 0)
        choice.field = static_cast<ScheduleField>(field);
    m_choices.push_back(std::move(choice));
    read();
    // Later: the list that was chosen from is among those made anew.
    QMetaObject::invokeMethod(this, &ScheduleDialog::fillColumns, Qt::QueuedConnection);
}

void ScheduleDialog::addLevels() {
    if (!m_reading)
        return;
    const Edit edit = levelsEdit(
        m_desk.book(), m_desk.ids(), m_target.plan, m_reading->missingLevels);
    if (m_desk.perform(edit)) {
        fillLevels();
        read();
    }
}

void ScheduleDialog::showReading() {
    const int good = m_reading ? static_cast<int>(m_reading->rows.size()) : 0;
    m_bring->setText(counted(good, tr("Bring in 1 good row"), tr("Bring in %1 good rows")));
    m_bring->setEnabled(good > 0);
    m_addLevels->setVisible(m_reading && !m_reading->missingLevels.empty());
    if (!m_reading) {
        m_view->clear();
        return;
    }
    QStringList missing;
    for (const std::string& level : m_reading->missingLevels)
        missing.append(text(level));
    m_addLevels->setText(tr("Add the levels %1").arg(missing.join(QStringLiteral(", "))));
    const QString lacks = text(m_reading->missingSentence());
    m_message->setText(QFileInfo(m_path).fileName() + QStringLiteral(": ")
        + (lacks.isEmpty() ? tr("%1 good, %2 rejected, %3 lines passed over.")
                                 .arg(good)
                                 .arg(m_reading->rejectedRows())
                                 .arg(m_reading->skipped.size())
                           : lacks));
    m_view->showReading(*m_reading, m_desk.book());
}

void ScheduleDialog::bringIn() {
    if (!m_reading)
        return;
    const std::string file = utf8(QFileInfo(m_path).fileName());
    if (m_desk.perform(scheduleEdit(m_desk.book(), m_desk.ids(), m_target, *m_reading, file)))
        accept();
}

} // namespace miterbook
