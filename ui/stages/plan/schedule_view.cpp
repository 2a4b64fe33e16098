// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/schedule_view.h"

#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "plan/room_text.h"

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

namespace {

FigureRow openingRow(const ScheduleRow& row, const Opening& opening, LengthStyle style) {
    const std::string size = formatLengthWithUnit(opening.width, style) + " x "
        + formatLengthWithUnit(opening.height, style);
    return {
        {countCell(row.line), wordCell(opening.mark), wordCell(size), countCell(opening.count),
            wordCell(std::string(word(opening.kind)) + ", " + std::string(word(opening.style)))},
        {}, false};
}

FigureRow roomRow(const ScheduleRow& row, const Room& room, LengthStyle style) {
    return {{countCell(row.line), wordCell(room.mark), wordCell(formatWalls(room.walls, style)),
                countCell(1), wordCell(room.name)},
        {}, false};
}

FigureRow sentenceRow(int line, const std::string& sentence) {
    return {{line > 0 ? countCell(line) : emptyCell(), wordCell(sentence)}, {}, false};
}

} // namespace

ScheduleView::ScheduleView(QWidget* parent)
    : QTabWidget(parent)
    , m_good(new FigureView(tr("Good rows of a schedule"),
          {tr("Line"), tr("Mark"), tr("Size"), tr("Count"), tr("What")}))
    , m_rejected(new FigureView(
          tr("Rejected rows of a schedule"), {tr("Line"), tr("Column"), tr("Text"), tr("Reason")}))
    , m_remarks(new FigureView(tr("Remarks on a schedule"), {tr("Line"), tr("Remark")})) {
    addTab(m_good, tr("Good"));
    addTab(m_rejected, tr("Rejected"));
    addTab(m_remarks, tr("Remarks"));
}

void ScheduleView::clear() {
    m_good->setRows({});
    m_rejected->setRows({});
    m_remarks->setRows({});
}

void ScheduleView::showReading(const ScheduleReading& reading, const Book& book) {
    const LengthStyle style = book.prices.shop().lengths();
    std::vector<FigureRow> good;
    for (const ScheduleRow& row : reading.rows) {
        if (row.opening)
            good.push_back(openingRow(row, *row.opening, style));
        else if (row.room)
            good.push_back(roomRow(row, *row.room, style));
    }
    std::vector<FigureRow> rejected;
    for (const Rejection& each : reading.rejected)
        rejected.push_back({{countCell(each.line), wordCell(each.column), wordCell(each.text),
                                wordCell(each.reason)},
            {}, false});
    std::vector<FigureRow> remarks;
    for (const std::string& sentence : reading.remarks)
        remarks.push_back(sentenceRow(0, sentence));
    for (const std::string& header : reading.unmapped)
        remarks.push_back(sentenceRow(0, "The column \"" + header + "\" is not understood."));
    for (const SkippedLine& line : reading.skipped)
        remarks.push_back(sentenceRow(line.line, "Passed over: " + line.text));
    setTabText(0, tr("Good (%1)").arg(good.size()));
    setTabText(1, tr("Rejected (%1)").arg(rejected.size()));
    setTabText(2, tr("Remarks (%1)").arg(remarks.size()));
    m_good->setRows(std::move(good));
    m_rejected->setRows(std::move(rejected));
    m_remarks->setRows(std::move(remarks));
}

} // namespace miterbook
