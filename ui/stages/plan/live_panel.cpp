// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/live_panel.h"

#include "basics/number_text.h"
#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "figures/figure_cells.h"
#include "figures/figure_view.h"
#include "takeoff/forgotten.h"
#include "widgets/plain_text.h"

#include <QLabel>
#include <QListWidget>
#include <QVBoxLayout>

#include <algorithm>
#include <map>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

LivePanel::LivePanel(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_head(headLabel({}))
    , m_feet(new FigureView(tr("Running feet"), {tr("Profile"), tr("Running ft"), tr("Pieces")}))
    , m_count(plainLabel({}))
    , m_list(new QListWidget) {
    setAccessibleName(tr("What the plan comes to"));
    m_list->setAccessibleName(tr("Problems and things that seem forgotten"));
    m_list->setWordWrap(true);
    m_list->setAlternatingRowColors(true);
    m_list->setTextElideMode(Qt::ElideNone);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_head);
    layout->addWidget(m_feet, 3);
    layout->addWidget(m_count);
    layout->addWidget(m_list, 2);
    connect(&figures, &FigureDesk::figured, this, &LivePanel::show);
    connect(m_list, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
        Q_EMIT wanted(m_remarks[static_cast<std::size_t>(m_list->row(item))].source);
    });
    show();
}

void LivePanel::show() {
    showHead();
    showFeet();
    showRemarks();
}

void LivePanel::showHead() {
    const Estimate& estimate = m_figures.figures().estimate;
    const std::string& sign = m_desk.book().prices.shop().currency;
    int pieces = 0;
    for (const Piece& piece : m_figures.figures().takeoff.pieces)
        pieces += piece.count;
    m_head->setText(tr("%1     %2 hours     %3 pieces")
                        .arg(text(formatMoney(estimate.total.price, sign)),
                            text(formatHours(estimate.total.hours)))
                        .arg(pieces));
}

void LivePanel::showFeet() {
    struct Sum {
        Length running;
        int pieces = 0;
    };
    std::map<Id<Profile>, Sum> sums;
    for (const Piece& piece : m_figures.figures().takeoff.pieces) {
        Sum& sum = sums[piece.profile];
        sum.running += piece.longPoint * piece.count;
        sum.pieces += piece.count;
    }
    std::vector<FigureRow> rows;
    for (const auto& [profile, sum] : sums)
        rows.push_back({{wordCell(m_desk.book().prices.profileName(profile)),
                            feetCell(sum.running), countCell(sum.pieces)},
            tr("The long points of all pieces of this profile. The Takeoff stage names each piece."),
            false});
    m_feet->setRows(std::move(rows));
}

void LivePanel::showRemarks() {
    const JobFigures& figures = m_figures.figures();
    m_remarks = figures.takeoff.remarks;
    if (m_figures.job()) {
        const auto seems = forgotten(figures.whole, m_desk.book().prices);
        m_remarks.insert(m_remarks.end(), seems.begin(), seems.end());
    }
    std::ranges::stable_sort(m_remarks, [](const Remark& a, const Remark& b) {
        return a.weight == Remark::Weight::problem && b.weight != Remark::Weight::problem;
    });
    m_problems = static_cast<int>(std::ranges::count(m_remarks, Remark::Weight::problem, &Remark::weight));
    const int current = m_list->currentRow();
    m_list->clear();
    for (const Remark& remark : m_remarks) {
        const bool problem = remark.weight == Remark::Weight::problem;
        m_list->addItem((problem ? tr("Problem: ") : QString()) + text(remark.sentence));
    }
    m_list->setCurrentRow(std::min(current, m_list->count() - 1));
    m_count->setText(m_remarks.empty()
            ? tr("Nothing seems wrong or forgotten.")
            : counted(remarks(), tr("One to look at; Enter leads to the row."),
                  tr("%1 to look at; Enter leads to the row.")));
}

} // namespace miterbook
