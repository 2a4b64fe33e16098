// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/cut/measures_tab.h"

#include "cut/cut_checks.h"
#include "desk/desk.h"
#include "io/file_bytes.h"
#include "io/measures.h"
#include "stages/cut/cut_desk.h"
#include "stages/cut/cut_edits.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/seen_refresh.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QAction>
#include <QDir>
#include <QFileDialog>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>
#include <functional>

namespace miterbook {

namespace {

/// Openings alike have one id; each of them is a row.
std::int64_t keyOfMeasure(const MeasureRow& row) {
    return row.measure.opening.value() * 10'000 + row.measure.unit;
}

/// Keeps a row as typed; another number moves it in the walking order of its level.
void storeMeasure(EditBuilder& edit, CutDesk& cut, const MeasureRow& row) {
    Measure measure = row.measure;
    measure.plan = cut.plan();
    if (!measure.id)
        measure.id = cut.desk().ids().next<Measure>();
    const std::vector<OpeningUnit>& units = cut.figures().units;
    const auto unit = std::ranges::find_if(units, [&](const OpeningUnit& each) {
        return each.opening.id == measure.opening && each.unit == measure.unit;
    });
    if (unit != units.end())
        measure.position = placeFor(units, *unit, row.number);
    edit.put(std::move(measure));
}

using ReadRows = std::function<std::vector<MeasureRow>()>;

TableModelBase* measureModel(CutDesk& cut, ReadRows rows, QObject* parent) {
    TableSpec<MeasureRow> spec;
    spec.name = MeasuresTab::tr("Measures");
    spec.columns = measureColumns();
    spec.rows = std::move(rows);
    spec.key = keyOfMeasure;
    spec.check = [](const MeasureRow& row) { return checkMeasure(row.measure); };
    spec.store = [&cut](EditBuilder& edit, const MeasureRow& row) { storeMeasure(edit, cut, row); };
    spec.title = [](const MeasureRow& row) { return "the measure of " + row.name; };
    spec.fixedRows = true;
    spec.emptyHint = MeasuresTab::tr(
        "Openings come from the plan: type windows and doors there first.");
    return new TableModel<MeasureRow>(cut.desk(), std::move(spec), parent);
}

QToolButton* button(QAction* action) {
    auto* tool = new QToolButton;
    tool->setDefaultAction(action);
    tool->setToolButtonStyle(Qt::ToolButtonTextOnly);
    return tool;
}

} // namespace

MeasuresTab::MeasuresTab(CutDesk& cut, QWidget* parent)
    : QWidget(parent)
    , m_cut(cut)
    , m_model(measureModel(
          cut, [this] { return m_rows; }, this))
    , m_bring(new QAction(tr("Bring in measures\u2026"), this))
    , m_planSizes(new QAction(tr("Start from the plan's sizes"), this))
    , m_remarks(plainLabel({}))
    , m_brought(plainLabel({})) {
    auto* panel = new TablePanel(*m_model);
    m_table = &panel->table();
    panel->addBeside(button(m_planSizes));
    panel->addBeside(button(m_bring));
    connect(m_bring, &QAction::triggered, this, &MeasuresTab::chooseFile);
    connect(m_planSizes, &QAction::triggered, this, &MeasuresTab::takePlanSizes);
    connect(m_table, &DataTable::currentRowChanged, this, &MeasuresTab::sayRemarks);
    auto* seen = new SeenRefresh(this, [this] { refresh(); });
    connect(&cut, &CutDesk::reckoned, seen, &SeenRefresh::want);
    m_remarks->setAccessibleDescription(tr("What the readings tell"));
    m_remarks->setMinimumHeight(fontMetrics().lineSpacing() * 3);
    m_remarks->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_brought->hide();
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(panel, 1);
    layout->addWidget(m_remarks);
    layout->addWidget(m_brought);
}

void MeasuresTab::refresh() {
    m_rows = measureRows(m_cut);
    m_model->refresh();
    sayRemarks();
}

void MeasuresTab::sayRemarks() {
    const int current = m_table->currentRow();
    QStringList lines;
    if (current >= 0 && current < static_cast<int>(m_rows.size())) {
        const MeasureRow& row = m_rows[static_cast<std::size_t>(current)];
        for (const MeasureRemark& remark : row.remarks)
            lines << text(row.name) + QStringLiteral(": ") + text(remark.sentence);
    }
    const auto out = std::ranges::count_if(
        m_rows, [](const auto& row) { return !row.remarks.empty(); });
    const auto measured = std::ranges::count_if(
        m_rows, [](const auto& row) { return readingsIn(row.measure) > 0; });
    if (lines.isEmpty())
        lines << tr("%1 of %2 openings measured, %3 to look at. Inside the jamb; doors from the "
                    "finished floor. A jamb that is shy of the wall has a minus.")
                     .arg(measured)
                     .arg(m_rows.size())
                     .arg(out);
    m_remarks->setText(lines.join(QLatin1Char('\n')));
}

void MeasuresTab::takePlanSizes() {
    const Edit edit = planSizesEdit(
        m_cut.book(), m_cut.desk().ids(), m_cut.plan(), m_cut.figures().units, m_cut.level());
    m_cut.desk().perform(edit);
}

void MeasuresTab::chooseFile() {
    const QString path = QFileDialog::getOpenFileName(window(), tr("Bring in measures"),
        QDir::homePath(), tr("Measures (*.csv *.txt *.tsv);;All files (*)"));
    if (!path.isEmpty())
        bringFile(path);
}

void MeasuresTab::bringFile(const QString& path) {
    const auto bytes = readFileBytes(utf8(path));
    if (!bytes) {
        m_cut.desk().refuse(bytes.error());
        return;
    }
    const std::string file = fileName(utf8(path));
    const auto reading = readMeasures(*bytes, m_cut.book(), m_cut.plan());
    if (!reading) {
        m_cut.desk().refuse(badInput(file + ": " + reading.error().sentence));
        return;
    }
    QStringList lines;
    for (const MeasureRejection& rejection : reading->rejected)
        lines << text(file + ", " + MeasureReading::sentence(rejection));
    for (const std::string& title : reading->unmapped)
        lines << tr("%1: the column \"%2\" was not understood.").arg(text(file), text(title));
    // Nothing is half brought in: with a row that cannot be read none is.
    if (reading->rejected.empty())
        m_cut.desk().perform(
            measuresEdit(m_cut.book(), m_cut.desk().ids(), m_cut.plan(), *reading, file));
    else
        lines.prepend(tr("Nothing was brought in; mend these rows first:"));
    m_brought->setText(lines.join(QLatin1Char('\n')));
    m_brought->setVisible(!lines.isEmpty());
}

} // namespace miterbook
