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

#include <QCheckBox>
#include <QHBoxLayout>
#include <QInputDialog>
#include <QLabel>
#include <QListWidget>
#include <QPushButton>
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
    , m_feet(new FigureView(tr("Running trim"), {tr("Profile"), tr("Running"), tr("Pieces")}))
    , m_count(plainLabel({}))
    , m_list(new QListWidget)
    , m_away(new QPushButton(tr("Put a&way\u2026")))
    , m_showAway(new QCheckBox) {
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
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_away);
    buttons->addWidget(m_showAway, 1);
    layout->addLayout(buttons);
    m_away->setAccessibleName(tr("Put the reminder away with a reason, or bring it back"));
    connect(m_away, &QPushButton::clicked, this, &LivePanel::askReason);
    connect(m_showAway, &QCheckBox::toggled, this, &LivePanel::showRemarks);
    connect(m_list, &QListWidget::currentRowChanged, this, &LivePanel::showChosen);
    connect(&desk, &Desk::changed, this, &LivePanel::showRemarks);
    connect(&figures, &FigureDesk::figured, this, &LivePanel::show);
    connect(m_list, &QListWidget::itemActivated, this, [this](const QListWidgetItem* item) {
        const auto row = static_cast<std::size_t>(m_list->row(item));
        if (row < m_remarks.size())
            Q_EMIT wanted(m_remarks[row].source);
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
    const PriceBook& prices = m_desk.book().prices;
    std::vector<FigureRow> rows;
    for (const auto& [profile, sum] : sums)
        rows.push_back({{wordCell(prices.profileName(profile)),
                            {text(formatRunWithUnit(sum.running, prices.shop().unit)),
                                static_cast<double>(sum.running.nm())},
                            countCell(sum.pieces)},
            tr("The long points of all pieces of this profile. The Takeoff stage names each "
               "piece."),
            false});
    m_feet->setRows(std::move(rows));
}

void LivePanel::showRemarks() {
    const JobFigures& figures = m_figures.figures();
    m_remarks = standing(figures.takeoff.remarks, dismissals());
    if (m_figures.job()) {
        const auto seems = standing(forgotten(figures.whole, m_desk.book().prices), dismissals());
        m_remarks.insert(m_remarks.end(), seems.begin(), seems.end());
    }
    std::ranges::stable_sort(m_remarks, [](const Remark& a, const Remark& b) {
        return a.weight == Remark::Weight::problem && b.weight != Remark::Weight::problem;
    });
    m_problems = static_cast<int>(
        std::ranges::count(m_remarks, Remark::Weight::problem, &Remark::weight));
    const int current = m_list->currentRow();
    m_list->clear();
    for (const Remark& remark : m_remarks) {
        const bool problem = remark.weight == Remark::Weight::problem;
        m_list->addItem((problem ? tr("Problem: ") : QString()) + text(remark.sentence));
    }
    m_putAway.clear();
    if (m_showAway->isChecked()) {
        for (const auto& [id, each] : dismissals()) {
            m_putAway.push_back(each);
            m_list->addItem(tr("Put away: %1 (%2)").arg(text(each.sentence), text(each.reason)));
        }
    }
    m_showAway->setText(counted(static_cast<qsizetype>(dismissals().size()),
        tr("Show what was put away (1)"), tr("Show what was put away (%1)")));
    m_showAway->setVisible(!dismissals().empty());
    m_list->setCurrentRow(std::min(current, m_list->count() - 1));
    showChosen();
    m_count->setText(m_remarks.empty()
            ? tr("Nothing seems wrong or forgotten.")
            : counted(remarks(), tr("One to look at; Enter leads to the row."),
                tr("%1 to look at; Enter leads to the row.")));
}

const Table<Dismissal>& LivePanel::dismissals() const {
    return m_desk.book().sheet(m_figures.job().plan).of<Dismissal>();
}

/// The button does what can be done with the line that is chosen.
void LivePanel::showChosen() {
    const auto row = static_cast<std::size_t>(std::max(m_list->currentRow(), 0));
    const bool any = m_list->currentRow() >= 0;
    const bool away = any && row >= m_remarks.size();
    m_away->setText(away ? tr("Bring &back") : tr("Put a&way\u2026"));
    m_away->setEnabled(away || (any && m_remarks[row].weight != Remark::Weight::problem));
}

void LivePanel::askReason() {
    const int row = m_list->currentRow();
    if (row < 0)
        return;
    if (static_cast<std::size_t>(row) >= m_remarks.size())
        return bringBack();
    bool chosen = false;
    const QString reason = QInputDialog::getItem(this, tr("Put away"), tr("Why is it in order?"),
        {tr("by others"), tr("not in this plan"), tr("the builder wants it so"),
            tr("counted elsewhere")},
        0, true, &chosen);
    if (chosen)
        putAway(reason);
}

void LivePanel::putAway(const QString& reason) {
    const auto row = static_cast<std::size_t>(m_list->currentRow());
    if (m_list->currentRow() < 0 || row >= m_remarks.size())
        return;
    const Dismissal dismissal{m_desk.ids().next<Dismissal>(), m_figures.job().plan,
        m_remarks[row].sentence, utf8(reason.trimmed())};
    m_desk.perform(putEdit(m_desk.book(), "Put away: " + dismissal.sentence, dismissal));
}

void LivePanel::bringBack() {
    const auto row = static_cast<std::size_t>(m_list->currentRow()) - m_remarks.size();
    if (m_list->currentRow() < 0 || row >= m_putAway.size())
        return;
    EditBuilder edit(m_desk.book(), "Bring back: " + m_putAway[row].sentence);
    edit.remove(m_putAway[row].id);
    m_desk.perform(edit.take());
}

} // namespace miterbook
