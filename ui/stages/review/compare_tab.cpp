// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/review/compare_tab.h"

#include "charts/bar_picture.h"
#include "desk/desk.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "stages/review/review_desk.h"
#include "widgets/column_text.h"
#include "widgets/plain_text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QSplitter>
#include <QVBoxLayout>

#include <cmath>

namespace miterbook {

namespace {

enum class Shown { perHour, perHouse, overrun, opening, base };

FigureCell decimalCell(double value, int decimals) {
    return {QString::number(value, 'f', decimals), value};
}

FigureCell shareCell(double share) {
    return {QStringLiteral("%1%2 %")
                .arg(share > 0 ? QStringLiteral("+") : QString())
                .arg(share * 100, 0, 'f', 1),
        share};
}

FigureRow groupRow(const GroupResult& group, const std::string& name, LengthUnit written) {
    FigureRow row;
    row.cells = {wordCell(name), countCell(group.houses), hoursCell(group.bid),
        hoursCell(group.used), moneyCell(group.price), moneyCell(group.profit()),
        moneyCell(group.profitPerHouse()), moneyCell(group.profitPerHour()),
        decimalCell(group.hoursPerOpening, 2), decimalCell(group.hoursPer100(written), 2),
        shareCell(group.overrun), decimalCell(group.overrunSpread * 100, 1),
        shareCell(group.expected.mean), decimalCell(group.callbacks, 1)};
    row.from = CompareTab::tr("The overrun is the mean over its houses of hours used against hours "
                              "bid, and how much they scatter. Expected of the next one is drawn "
                              "towards all houses, the more so the fewer there are: %1 % of its "
                              "own distance is kept, give or take %2 points.")
                   .arg(std::lround(group.expected.kept * 100))
                   .arg(group.expected.error * 100, 0, 'f', 1);
    return row;
}

PictureBar barOf(const GroupResult& group, const QString& name, Shown shown, const Shop& shop) {
    const QString sign = text(shop.currency);
    switch (shown) {
    case Shown::perHour:
        return {name, static_cast<double>(group.profitPerHour().cents()) / 100,
            sign + text(formatMoney(group.profitPerHour()))};
    case Shown::perHouse:
        return {name, static_cast<double>(group.profitPerHouse().cents()) / 100,
            sign + text(formatMoney(group.profitPerHouse()))};
    case Shown::overrun:
        return {name, group.overrun * 100, shareCell(group.overrun).text};
    case Shown::opening:
        return {name, group.hoursPerOpening, QString::number(group.hoursPerOpening, 'f', 2)};
    default:
        return {name, group.hoursPer100(shop.unit),
            QString::number(group.hoursPer100(shop.unit), 'f', 2)};
    }
}

QString axisOf(Shown shown, const Shop& shop) {
    const QString sign = text(shop.currency);
    switch (shown) {
    case Shown::perHour:
        return CompareTab::tr("profit for each man-hour, %1").arg(sign);
    case Shown::perHouse:
        return CompareTab::tr("profit for each house, %1").arg(sign);
    case Shown::overrun:
        return CompareTab::tr("hours over the bid, %");
    case Shown::opening:
        return CompareTab::tr("hours for each door or window");
    default:
        return CompareTab::tr("hours for 100 %1 of base").arg(text(runUnit(shop.unit)));
    }
}

} // namespace

CompareTab::CompareTab(ReviewDesk& review, QWidget* parent)
    : QWidget(parent)
    , m_review(review)
    , m_by(new QComboBox)
    , m_what(new QComboBox)
    , m_hint(plainLabel({}))
    , m_view(new FigureView(tr("Houses compared"),
          {tr("Name"), tr("Houses"), tr("Hours bid"), tr("Used"), tr("Price"), tr("Profit"),
              tr("Per house"), tr("Per hour"), tr("Hours an opening"), tr("Hours 100 of base"),
              tr("Overrun"), tr("Scatter, %"), tr("Expected"), tr("Callbacks")}))
    , m_picture(new BarPicture(tr("Picture of the comparison"))) {
    m_by->setAccessibleName(tr("Compare by"));
    for (const QString& by : wordsOf<CompareBy>())
        m_by->addItem(tr("by %1").arg(by));
    m_what->setAccessibleName(tr("What the picture shows"));
    m_what->addItems({tr("profit per man-hour"), tr("profit per house"), tr("hours over the bid"),
        tr("hours per opening"), tr("hours per 100 of base")});
    auto* top = new QHBoxLayout;
    top->addWidget(m_by);
    top->addWidget(m_what);
    top->addWidget(m_hint, 1);
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(m_view);
    split->addWidget(m_picture);
    split->setStretchFactor(0, 1);
    split->setStretchFactor(1, 1);
    split->setSizes({fontMetrics().height() * 20, fontMetrics().height() * 20});
    auto* layout = new QVBoxLayout(this);
    layout->addLayout(top);
    layout->addWidget(split, 1);
    m_picture->printFor([this] {
        return PaperJob{m_review.book(), {}, {}, {}, m_review.desk().clock().today()};
    });
    connect(m_by, &QComboBox::currentIndexChanged, this, &CompareTab::refresh);
    connect(m_what, &QComboBox::currentIndexChanged, this, &CompareTab::refresh);
    connect(&review, &ReviewDesk::changed, this, [this] {
        m_stale = true;
        if (isVisible())
            refresh();
    });
}

void CompareTab::compareBy(CompareBy by) {
    m_by->setCurrentIndex(static_cast<int>(by));
    refresh();
}

void CompareTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    if (m_stale)
        refresh();
}

void CompareTab::refresh() {
    m_stale = false;
    const auto by = static_cast<CompareBy>(m_by->currentIndex());
    const auto shown = static_cast<Shown>(m_what->currentIndex());
    const Shop& shop = m_review.book().prices.shop();
    std::vector<FigureRow> rows;
    std::vector<PictureBar> bars;
    for (const GroupResult& group : compareHouses(m_review.results(), by)) {
        const std::string name = groupName(m_review.book(), by, group.key);
        rows.push_back(groupRow(group, name, shop.unit));
        bars.push_back(barOf(group, text(name), shown, shop));
    }
    m_hint->setText(rows.empty()
            ? tr("No house is finished yet. Set its stage to finished on the Houses screen.")
            : counted(qsizetype(m_review.results().size()), tr("1 finished house"),
                tr("%1 finished houses")));
    m_view->setRows(std::move(rows));
    m_picture->setBars(tr("%1, %2").arg(m_what->currentText(), m_by->currentText()),
        axisOf(shown, shop), tr("over zero"), tr("under zero"), bars);
}

} // namespace miterbook
