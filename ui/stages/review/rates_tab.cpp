// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/review/rates_tab.h"

#include "charts/line_picture.h"
#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "job/stored_form.h"
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

FigureRow rateRow(const TaskRate& rate) {
    const double held = rate.held.minutes.toDouble();
    const double drift = held > 0 ? rate.learned.minutes / held - 1 : 0;
    FigureRow row;
    row.cells = {wordCell(word(rate.held.task)), wordCell(word(unitOf(rate.held.task))),
        minutesCell(held), wordCell(word(rate.held.origin)), minutesCell(rate.starter.toDouble()),
        minutesCell(rate.learned.minutes), minutesCell(rate.learned.low),
        minutesCell(rate.learned.high), countCell(rate.learned.houses),
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

FigureRow apartRow(const ConditionRate& rate) {
    const std::string words = TextForm<Conditions>::write(rate.conditions);
    FigureRow row;
    row.cells = {wordCell(words.empty() ? "plain" : words), countCell(rate.houses),
        minutesCell(rate.book.toDouble()), minutesCell(rate.learned.minutes),
        minutesCell(rate.learned.low), minutesCell(rate.learned.high)};
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

void RatesTab::refresh() {
    m_stale = false;
    std::vector<FigureRow> rows;
    for (const TaskRate& rate : m_review.rates())
        rows.push_back(rateRow(rate));
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
        rates, [&](const TaskRate& rate) { return text(word(rate.held.task)) == task; });
    return found == rates.end() ? nullptr : &*found;
}

void RatesTab::choose(Task task) {
    if (m_stale)
        refresh();
    const QAbstractItemModel& model = *m_view->table()->model();
    for (int row = 0; row < model.rowCount(); ++row) {
        if (model.index(row, 0).data().toString() == text(word(task)))
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
    const QString task = text(word(rate->held.task));
    m_accept->setText(tr("Take %1 minutes into the book")
                          .arg(text(formatMinutesPerUnit(rate->learnedMinutes()))));
    m_said->setText(
        tr("%1: %2. The next bids go by what is taken into the book; bids that were won "
           "stay as they are.")
            .arg(task, text(rate->evidence())));
    std::vector<FigureRow> apart;
    for (const ConditionRate& each : rate->apart)
        apart.push_back(apartRow(each));
    m_apart->setRows(std::move(apart));
    PictureLine seen{tr("each house"), PictureLine::Look::dots, {}};
    PictureLine learned{tr("learned"), PictureLine::Look::line, {}};
    PictureLine book{tr("the book"), PictureLine::Look::dashed, {}};
    PictureBand band{tr("nine times in ten"), {}, {}, {}};
    for (const RateTrendPoint& point : trendOf(*rate)) {
        seen.points.emplace_back(point.date, point.seen);
        learned.points.emplace_back(point.date, point.learned.minutes);
        book.points.emplace_back(point.date, rate->held.minutes.toDouble());
        band.days.push_back(point.date);
        band.low.push_back(point.learned.low);
        band.high.push_back(point.learned.high);
    }
    m_picture->setLines(tr("%1, minutes for one").arg(task), tr("minutes"), {learned, book, seen},
        band, task + QStringLiteral(": ") + text(rate->evidence()));
}

} // namespace miterbook
