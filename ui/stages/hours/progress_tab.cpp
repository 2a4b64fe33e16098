// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/progress_tab.h"

#include "charts/line_picture.h"
#include "desk/figure_desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "job/hung_share.h"
#include "stages/hours/week_desk.h"
#include "widgets/plain_text.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include <map>

namespace miterbook {

namespace {

FigureCell signedHours(Hours hours) {
    FigureCell cell = hoursCell(hours);
    if (hours > Hours())
        cell.text.prepend(u'+');
    return cell;
}

QString howKnown(const WorkProgress& work) {
    switch (work.by) {
    case DoneBy::ticks:
        return ProgressTab::tr("%1 %: the share of which every piece is ticked as hung.")
            .arg(text(formatPercent(work.done)));
    case DoneBy::units:
        return ProgressTab::tr("%1 %: %2 %3 finished of %4 bid.")
            .arg(text(formatPercent(work.done)), text(formatQuantity(work.unitsDone)),
                text(word(doneUnit(work.work))), text(formatQuantity(work.unitsBid)));
    case DoneBy::said:
        return ProgressTab::tr("%1 %, as was said.").arg(text(formatPercent(work.done)));
    default:
        return ProgressTab::tr("How much is done is not known: write down what was finished beside "
                               "the hours, or tick pieces as hung.");
    }
}

QString forecastFrom(const WorkProgress& work) {
    if (work.by == DoneBy::unknown)
        return ProgressTab::tr("Forecast: the larger of what was bid and what has been used.");
    return ProgressTab::tr(
        "Forecast: the hours bid at the pace so far, once a tenth is done; before "
        "that what was used and the rest as bid.");
}

FigureCell doneCell(const WorkProgress& work) {
    if (work.by == DoneBy::unknown)
        return {ProgressTab::tr("not known"), {}};
    return percentCell(work.done);
}

FigureRow workRow(const WorkProgress& work, Money crewRate) {
    FigureRow row;
    const Hours more = work.forecast - work.bid;
    row.cells = {wordCell(word(work.work)), hoursCell(work.bid), hoursCell(work.used),
        doneCell(work), quantityCell(work.unitsDone), quantityCell(work.unitsBid),
        hoursCell(work.forecast), signedHours(more),
        moneyCell(Money::cents(-roundedQuotient(Wide(more.minutes()) * crewRate.cents(), 60)))};
    row.from = howKnown(work) + u' ' + forecastFrom(work);
    return row;
}

FigureRow totalRow(const HouseProgress& house, Money crewRate) {
    FigureRow row;
    row.cells = {{ProgressTab::tr("all"), {}}, hoursCell(house.bid), hoursCell(house.used),
        percentCell(house.done), emptyCell(), emptyCell(), hoursCell(house.forecast),
        signedHours(house.forecast - house.bid), moneyCell(Money() - house.profitLost(crewRate))};
    row.from = ProgressTab::tr(
        "With %1 hours of waiting and callbacks, which nobody bids. The share "
        "done is weighted by the hours bid.")
                   .arg(text(formatHours(house.lost)));
    row.strong = true;
    return row;
}

} // namespace

ProgressTab::ProgressTab(WeekDesk& week, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_week(week)
    , m_figures(figures)
    , m_summary(plainLabel({}))
    , m_view(new FigureView(tr("Hours against the bid"),
          {tr("Piece of work"), tr("Bid"), tr("Used"), tr("Done"), tr("Finished"), tr("Of"),
              tr("At completion"), tr("Over bid"), tr("To profit")}))
    , m_picture(new LinePicture(tr("Picture of the hours used"))) {
    m_summary->setAccessibleName(tr("How the house stands"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_summary);
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(m_view);
    split->addWidget(m_picture);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    layout->addWidget(split, 1);
    connect(&week, &WeekDesk::changed, this, &ProgressTab::refresh);
    connect(&figures, &FigureDesk::sawRowsChanged, this, [this] {
        m_stale = true; // units hung count
        if (isVisible())
            refresh();
    });
    refresh();
}

QString ProgressTab::summary() const {
    return m_summary->text();
}

void ProgressTab::refresh() {
    m_stale = false;
    std::vector<FigureRow> rows;
    m_progress = {};
    if (m_week.house()) {
        const JobFigures& figures = m_figures.figures();
        m_progress = houseProgress(bidOf(m_week.book(), figures),
            m_week.book().time.summedEntries(m_week.house()),
            hungShares(cutFiguresFor(m_week.book(), figures)));
        for (const WorkProgress& work : m_progress.works)
            rows.push_back(workRow(work, figures.estimate.crewRate));
        rows.push_back(totalRow(m_progress, figures.estimate.crewRate));
    }
    m_view->setRows(std::move(rows));
    say();
    draw();
}

void ProgressTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale)
        refresh();
    draw();
}

/// Only for somebody to see: a picture is laid out when it is shown.
void ProgressTab::draw() {
    if (!isVisible())
        return;
    std::map<Date, Hours> days;
    for (const auto& [id, entry] : m_week.book().time.read()) {
        if (m_week.house() && entry.house == m_week.house())
            days[entry.date] += entry.time;
    }
    m_picture->setVisible(!days.empty());
    if (days.empty())
        return;
    PictureLine used{tr("used"), PictureLine::Look::line, {{addDays(days.begin()->first, -1), 0}}};
    Hours sum;
    for (const auto& [day, hours] : days) {
        sum += hours;
        used.points.emplace_back(day, sum.toDouble());
    }
    const auto level = [&](const QString& name, PictureLine::Look look, Hours hours) {
        const double value = hours.toDouble();
        return PictureLine{
            name, look, {{used.points.front().first, value}, {used.points.back().first, value}}};
    };
    m_picture->setLines(tr("Hours of the house"), tr("hours"),
        {used, level(tr("bid"), PictureLine::Look::dashed, m_progress.bid),
            level(tr("at completion"), PictureLine::Look::dotted, m_progress.forecast)},
        {}, m_summary->text());
}

void ProgressTab::say() {
    if (!m_week.house()) {
        m_summary->setText(tr("Hours are held against the bid of a house. Start a house from this "
                              "plan, or open one."));
        return;
    }
    const Hours more = m_progress.forecast - m_progress.bid;
    const Money lost = m_progress.profitLost(m_figures.figures().estimate.crewRate);
    const QString& sign = text(m_week.book().prices.shop().currency);
    QString said = tr("%1 of %2 hours bid are used, %3 % is done.")
                       .arg(text(formatHours(m_progress.used)), text(formatHours(m_progress.bid)),
                           text(formatPercent(m_progress.done)));
    if (more > Hours())
        said += u' '
            + tr(
                "As it goes it will take %1 hours more than bid, which takes %2%3 from the profit.")
                  .arg(text(formatHours(more)), sign, text(formatMoney(lost)));
    else if (more < Hours())
        said += u' '
            + tr("As it goes it will take %1 hours less than bid, which adds %2%3 to the profit.")
                  .arg(text(formatHours(Hours() - more)), sign, text(formatMoney(Money() - lost)));
    for (const std::string& note : m_progress.notes)
        said += u'\n' + text(note);
    m_summary->setText(said);
}

} // namespace miterbook
