// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/hours/progress_tab.h"

#include "charts/line_picture.h"
#include "desk/figure_desk.h"
#include "job/house_forecast.h"
#include "job/say_done.h"
#include "stages/hours/progress_rows.h"
#include "stages/hours/week_desk.h"
#include "widgets/columns.h"
#include "widgets/data_table.h"
#include "widgets/plain_text.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include <map>

namespace miterbook {

namespace {

/// Puts what was typed, or takes it back.
void storeDone(Desk& desk, EditBuilder& edit, const ProgressRow& row) {
    const bool isSaid = row.work.by == DoneBy::said;
    if (!row.all && (isSaid || row.work.by == DoneBy::unknown)) {
        putWorkDone(edit, desk.book(), desk.ids(), row.house, row.work.work,
            isSaid ? std::optional(row.work.done) : std::nullopt);
    }
}

} // namespace

ProgressTab::ProgressTab(WeekDesk& week, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_week(week)
    , m_figures(figures)
    , m_summary(plainLabel({}))
    , m_picture(new LinePicture(tr("Picture of the hours used"))) {
    m_summary->setAccessibleDescription(tr("How the house stands"));
    auto* panel = new TablePanel(*makeModel());
    m_table = &panel->table();
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_summary);
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(panel);
    split->addWidget(m_picture);
    split->setStretchFactor(0, 3);
    split->setStretchFactor(1, 2);
    layout->addWidget(split, 1);
    m_picture->printFor([this] {
        return PaperJob{m_week.book(), {}, m_week.house(), {}, m_week.today()};
    });
    connect(&week, &WeekDesk::changed, this, &ProgressTab::refresh);
    connect(&figures, &FigureDesk::sawRowsChanged, this, [this] {
        m_stale = true; // units hung count
        if (isVisible())
            refresh();
    });
    refresh();
}

TableModelBase* ProgressTab::makeModel() {
    TableSpec<ProgressRow> spec;
    spec.name = tr("Hours against the bid");
    spec.columns = progressColumns();
    spec.rows = [this] {
        const bool any = bool(m_week.house());
        return any ? progressRows(m_week.house(), m_progress, m_crewRate)
                   : std::vector<ProgressRow>();
    };
    spec.key = [](const ProgressRow& row) {
        return row.all ? std::int64_t(-1) : std::int64_t(row.work.work);
    };
    spec.store = [this](EditBuilder& edit, const ProgressRow& row) {
        storeDone(m_week.desk(), edit, row);
    };
    spec.title = [](const ProgressRow& row) {
        return "what is done of " + std::string(word(row.work.work));
    };
    spec.fixedRows = true;
    m_model = new TableModel<ProgressRow>(m_week.desk(), std::move(spec), this);
    return m_model;
}

QString ProgressTab::summary() const {
    return m_summary->text();
}

void ProgressTab::refresh() {
    m_stale = false;
    m_progress = {};
    m_crewRate = {};
    if (const House* house = m_week.book().house(m_week.house())) {
        const JobFigures& figures = m_figures.figures();
        const HouseBid bid = houseBid(m_week.book(), figures);
        m_crewRate = bid.crewRate;
        m_progress = houseForecast(m_week.book(), *house, bid, hungShares(m_week.book(), figures));
    }
    m_model->refresh();
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
        const bool isExtra = bidWorkOf(entry)
            == PieceOfWork::extras; // not bid, not in the forecast
        if (m_week.house() && entry.house == m_week.house() && !isExtra)
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

/// What hours over the bid, or under it, do to the profit.
QString ProgressTab::sayMore(Hours more, const QString& money) const {
    const House* house = m_week.book().house(m_week.house());
    const bool done = house && isFinished(*house);
    const bool over = more > Hours();
    const QString hours = text(formatHours(over ? more : Hours() - more));
    if (done) {
        return (over ? tr("It took %1 hours more than bid, which took %2 from the profit.")
                     : tr("It took %1 hours less than bid, which added %2 to the profit."))
            .arg(hours, money);
    }
    return (over
            ? tr("As it goes it will take %1 hours more than bid, which takes %2 from the profit.")
            : tr("As it goes it will take %1 hours less than bid, which adds %2 to the profit."))
        .arg(hours, money);
}

void ProgressTab::say() {
    if (!m_week.house()) {
        m_summary->setText(tr("Hours are held against the bid of a house. Start a house from this "
                              "plan, or open one."));
        return;
    }
    const Hours more = m_progress.forecast - m_progress.bid;
    const Money lost = m_progress.profitLost(m_crewRate);
    const QString& sign = text(m_week.book().prices.shop().currency);
    QString said = tr("%1 of %2 hours bid are used, %3 % is done.")
                       .arg(text(formatHours(m_progress.used)), text(formatHours(m_progress.bid)),
                           text(formatPercent(m_progress.done)));
    if (more != Hours())
        said += u' ' + sayMore(more, sign + text(formatMoney(lost < Money() ? -lost : lost)));
    for (const std::string& note : m_progress.notes)
        said += u'\n' + text(note);
    m_summary->setText(said);
}

} // namespace miterbook
