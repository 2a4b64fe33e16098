// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/review/rates_tab.h"

#include "book/said_words.h"
#include "charts/line_picture.h"
#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "stages/review/review_desk.h"
#include "widgets/plain_text.h"

#include <QAbstractItemView>
#include <QHBoxLayout>
#include <QHeaderView>
#include <QLabel>
#include <QPushButton>
#include <QSplitter>
#include <QTableView>
#include <QVBoxLayout>

#include <algorithm>

namespace miterbook {

namespace {

FigureCell minutesCell(double minutes) {
    return {QString::number(minutes, 'f', 2), minutes};
}

/// Minutes for one unit of a task, for the eye: for a metre where the shop writes so.
class Minutes {
public:
    Minutes(Task task, LengthUnit written)
        : m_unit(unitOf(task))
        , m_written(written) {}

    double said(double counted) const {
        // By an amount of many: what is typed is rounded, a curve is not.
        const double many = 1000;
        const Quantity one = amountSaid(Quantity::count(1000), m_unit, m_written);
        return counted * many / one.toDouble();
    }
    FigureCell cell(double counted) const { return minutesCell(said(counted)); }
    std::string unit() const { return unitText(m_unit, m_written); }

private:
    Unit m_unit;
    LengthUnit m_written;
};

FigureRow rateRow(const TaskRate& rate, LengthUnit written) {
    const Minutes minutes(rate.held.task, written);
    const double held = rate.held.minutes.toDouble();
    const double drift = held > 0 ? rate.learned.minutes / held - 1 : 0;
    FigureRow row;
    row.cells = {wordCell(said(rate.held.task, written)), wordCell(minutes.unit()),
        minutes.cell(held), wordCell(word(rate.held.origin)), minutes.cell(rate.starter.toDouble()),
        minutes.cell(rate.learned.minutes), minutes.cell(rate.learned.low),
        minutes.cell(rate.learned.high), countCell(rate.learned.houses),
        {QStringLiteral("%1%2 %")
                .arg(drift > 0 ? QStringLiteral("+") : QString())
                .arg(drift * 100, 0, 'f', 1),
            drift}};
    row.from = RatesTab::tr(
        "Minutes of one carpenter for one unit under plain conditions. The shop's "
        "own rate is between low and high nine times in ten. %1 of %2 houses are "
        "far off; only their direction was believed.")
                   .arg(rate.learned.odd)
                   .arg(rate.learned.houses);
    return row;
}

std::string wordsOf(const Conditions& conditions, LengthUnit written) {
    const std::string words = said(conditions, written);
    return words.empty() ? "plain" : words;
}

FigureRow apartRow(const ConditionRate& rate, const Minutes& minutes, LengthUnit written) {
    FigureRow row;
    row.cells = {wordCell(wordsOf(rate.conditions, written)), countCell(rate.houses),
        minutes.cell(rate.book.toDouble()), minutes.cell(rate.learned.minutes),
        minutes.cell(rate.learned.low), minutes.cell(rate.learned.high)};
    row.from = RatesTab::tr("The book's minutes with the factors of these conditions, against what "
                            "houses took under them.");
    return row;
}

} // namespace

RatesTab::RatesTab(ReviewDesk& review, QWidget* parent)
    : QWidget(parent)
    , m_review(review)
    , m_view(new FigureView(tr("Labour rates learned"),
          {tr("Task"), tr("Unit"), tr("Book"), tr("From"), tr("Began with"), tr("Learned"),
              tr("Low"), tr("High"), tr("Houses"), tr("Drift")}))
    , m_apart(new FigureView(tr("By conditions"),
          {tr("Conditions"), tr("Houses"), tr("Book"), tr("Learned"), tr("Low"), tr("High")}))
    , m_said(plainLabel({}))
    , m_accept(new QPushButton)
    , m_picture(new LinePicture(tr("Picture of the rate over time"))) {
    m_said->setAccessibleDescription(tr("What the houses say of the rate"));
    auto* choice = new QHBoxLayout;
    choice->addWidget(m_said, 1);
    choice->addWidget(m_accept);
    auto* below = new QSplitter;
    below->addWidget(m_picture);
    below->addWidget(m_apart);
    below->setStretchFactor(0, 3);
    below->setStretchFactor(1, 2);
    auto* lower = new QWidget;
    auto* lowerLayout = new QVBoxLayout(lower);
    lowerLayout->setContentsMargins(0, 0, 0, 0);
    lowerLayout->addLayout(choice);
    lowerLayout->addWidget(below, 1);
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(m_view);
    split->addWidget(lower);
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(split);
    m_picture->printFor([this] {
        return PaperJob{m_review.book(), {}, {}, {}, m_review.desk().clock().today()};
    });
    connect(m_accept, &QPushButton::clicked, this, &RatesTab::accept);
    connect(m_view->table()->selectionModel(), &QItemSelectionModel::currentRowChanged, this,
        &RatesTab::showCurrent);
    connect(&review, &ReviewDesk::changed, this, [this] {
        m_stale = true;
        if (isVisible())
            refresh();
    });
    showCurrent();
}

void RatesTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale)
        refresh();
}

LengthUnit RatesTab::written() const {
    return m_review.book().prices.shop().unit;
}

void RatesTab::refresh() {
    m_stale = false;
    std::vector<FigureRow> rows;
    for (const TaskRate& rate : m_review.rates())
        rows.push_back(rateRow(rate, written()));
    const bool none = rows.empty();
    m_view->setRows(std::move(rows));
    if (!none && !m_view->table()->currentIndex().isValid())
        m_view->table()->setCurrentIndex(m_view->table()->model()->index(0, 0));
    showCurrent();
}

const TaskRate* RatesTab::current() {
    const QModelIndex index = m_view->table()->currentIndex();
    if (!index.isValid() || m_stale)
        return nullptr;
    const QString task = index.siblingAtColumn(0).data().toString();
    const auto& rates = m_review.rates();
    const auto found = std::ranges::find_if(
        rates, [&](const TaskRate& rate) { return text(said(rate.held.task, written())) == task; });
    return found == rates.end() ? nullptr : &*found;
}

void RatesTab::choose(Task task) {
    if (m_stale)
        refresh();
    const QAbstractItemModel& model = *m_view->table()->model();
    for (int row = 0; row < model.rowCount(); ++row) {
        if (model.index(row, 0).data().toString() == text(said(task, written())))
            m_view->table()->setCurrentIndex(model.index(row, 0));
    }
}

void RatesTab::accept() {
    if (const TaskRate* rate = current())
        m_review.accept(TaskRate(*rate)); // a copy: the list is made anew under it
}

void RatesTab::showCurrent() {
    const TaskRate* rate = current();
    m_accept->setEnabled(rate && rate->learnedMinutes() != rate->held.minutes);
    m_picture->setVisible(rate);
    m_apart->setVisible(rate && !rate->apart.empty());
    if (!rate) {
        m_accept->setText(tr("Take the learned rate into the book"));
        m_said->setText(
            tr("Rates are learned from finished houses whose hours were written down."));
        return;
    }
    const QString task = text(said(rate->held.task, written()));
    const Minutes minutes(rate->held.task, written());
    m_accept->setText(tr("Take %1 minutes into the book")
                          .arg(text(formatMinutesPerUnit(minutesSaid(
                              rate->learnedMinutes(), unitOf(rate->held.task), written())))));
    m_said->setText(
        tr("%1: %2. The next bids go by what is taken into the book; bids that were won "
           "stay as they are.")
            .arg(task, text(rate->evidence(written()))));
    std::vector<FigureRow> apart;
    for (const ConditionRate& each : rate->apart)
        apart.push_back(apartRow(each, minutes, written()));
    m_apart->setRows(std::move(apart));
    PictureLine seen{tr("each house"), PictureLine::Look::dots, {}};
    PictureLine learned{tr("learned"), PictureLine::Look::line, {}};
    PictureLine book{tr("the book"), PictureLine::Look::dashed, {}};
    PictureBand band{tr("9 of 10"), {}, {}, {}};
    for (const RateTrendPoint& point : trendOf(*rate)) {
        seen.points.emplace_back(point.date, minutes.said(point.seen));
        learned.points.emplace_back(point.date, minutes.said(point.learned.minutes));
        book.points.emplace_back(point.date, minutes.said(rate->held.minutes.toDouble()));
        band.days.push_back(point.date);
        band.low.push_back(minutes.said(point.learned.low));
        band.high.push_back(minutes.said(point.learned.high));
    }
    m_picture->setLines(tr("%1, minutes for one").arg(task), tr("minutes"), {learned, book, seen},
        band, task + QStringLiteral(": ") + text(rate->evidence(written())));
}

} // namespace miterbook
