// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/bid/sent_tab.h"

#include "basics/number_text.h"
#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "figures/figure_view.h"
#include "figures/job_paper.h"
#include "papers/bid_paper.h"
#include "papers/bid_parts.h"
#include "papers/send_bid.h"
#include "printing/preview.h"
#include "stages/bid/copy_settings.h"
#include "stages/bid/sent_rows.h"
#include "widgets/field_dialog.h"
#include "widgets/long_work.h"
#include "widgets/plain_text.h"

#include <QComboBox>
#include <QHBoxLayout>
#include <QLabel>
#include <QLineEdit>
#include <QPushButton>
#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

namespace {

bool isDraft(const QComboBox& box) {
    return box.currentData().toLongLong() == 0;
}

QString choiceText(const SentBid& bid) {
    return SentTab::tr("bid %1 of %2").arg(text(bidName(bid)), text(isoDate(bid.date)));
}

} // namespace

SentTab::SentTab(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_bids(new FigureView(tr("Bids sent"), sentTitles(), this))
    , m_differences(new FigureView(tr("Line by line"), differenceTitles(), this))
    , m_before(new QComboBox(this))
    , m_after(new QComboBox(this)) {
    m_bids->sayWhenEmpty(tr("Nothing was sent yet. A bid that is sent keeps its number and text."));
    auto* split = new QSplitter(Qt::Vertical);
    split->addWidget(sentPart());
    split->addWidget(comparePart());
    split->setChildrenCollapsible(false);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(split);
    connect(&figures, &FigureDesk::figured, this, &SentTab::refresh);
    connect(&desk, &Desk::changed, this, &SentTab::refresh);
}

QWidget* SentTab::sentPart() {
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    column->addWidget(m_bids, 1);
    auto* row = new QHBoxLayout;
    const auto add = [&](const QString& words, void (SentTab::*slot)()) {
        auto* button = new QPushButton(words);
        button->setAutoDefault(false);
        connect(button, &QPushButton::clicked, this, slot);
        row->addWidget(button);
    };
    add(tr("&Send the bid\u2026"), &SentTab::send);
    add(tr("Print as se&nt\u2026"), &SentTab::printOne);
    add(tr("&Accepted\u2026"), &SentTab::accept);
    add(tr("L&ost\u2026"), &SentTab::lose);
    add(tr("Not ans&wered after all"), &SentTab::reopen);
    add(tr("Copy the settin&gs\u2026"), &SentTab::copySettings);
    row->addStretch(1);
    column->addLayout(row);
    return part;
}

QWidget* SentTab::comparePart() {
    auto* part = new QWidget;
    auto* column = new QVBoxLayout(part);
    column->setContentsMargins(0, 0, 0, 0);
    auto* row = new QHBoxLayout;
    const auto add = [&](const QString& words, QComboBox* box) {
        auto* label = new QLabel(words);
        label->setBuddy(box);
        box->setAccessibleName(QString(words).remove(QLatin1Char('&')));
        box->setSizeAdjustPolicy(QComboBox::AdjustToContents);
        row->addWidget(label);
        row->addWidget(box);
        connect(box, &QComboBox::activated, this, &SentTab::compare);
    };
    add(tr("Compa&re"), m_before);
    add(tr("wit&h"), m_after);
    row->addStretch(1);
    column->addLayout(row);
    column->addWidget(m_differences, 1);
    return part;
}

void SentTab::showJob(const JobRef& job) {
    m_job = job;
    refresh();
}

void SentTab::refresh() {
    auto sent = m_job ? sentBidsOf(m_desk.book(), m_job.plan) : std::vector<SentBid>();
    const bool others = sent.size() != m_sent.size()
        || (!sent.empty() && sent.front().job != m_sent.front().job) || m_after->count() == 0;
    m_sent = std::move(sent);
    m_bids->setRows(sentRows(m_desk.book(), m_sent));
    if (others)
        refreshChoices();
    compare();
}

/// The latest that was sent against the draft.
void SentTab::refreshChoices() {
    for (QComboBox* box : {m_before, m_after}) {
        box->clear();
        box->addItem(tr("the draft"), QVariant::fromValue<qlonglong>(0));
        for (const SentBid& bid : m_sent)
            box->addItem(choiceText(bid), QVariant::fromValue<qlonglong>(bid.id.value()));
        box->setEnabled(!m_sent.empty());
    }
    m_before->setCurrentIndex(m_sent.empty() ? 0 : 1);
    m_after->setCurrentIndex(0);
}

void SentTab::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    compare();
}

Result<Paper> SentTab::chosenPaper(const QComboBox& box) const {
    const Id<SentBid> id(box.currentData().toLongLong());
    if (const SentBid* bid = m_desk.book().jobs.of<SentBid>().find(id))
        return sentBidPaper(m_desk.book(), *bid);
    const PaperJob job{
        m_desk.book(), m_job.plan, m_job.house, {}, m_desk.clock().today(), m_job.selection};
    return bidPaper(job, m_figures.figures(), {}, {});
}

void SentTab::compare() {
    if (!isVisible())
        return; // when it is shown
    if (m_sent.empty() || !m_job || !m_desk.book().isOpen(m_job.plan) || m_figures.job() != m_job) {
        m_differences->setRows({});
        return;
    }
    const auto before = chosenPaper(*m_before);
    const auto after = chosenPaper(*m_after);
    if (before && after) {
        auto differences = comparePapers(*before, *after);
        if (isDraft(*m_before)
            || isDraft(*m_after)) { // its alternates are reckoned when it is sent
            std::erase_if(differences,
                [](const PaperDifference& each) { return each.part == alternatesTitle; });
        }
        m_differences->setRows(differenceRows(differences));
        return;
    }
    m_differences->setRows({});
    m_desk.refuse(before ? after.error() : before.error());
}

const SentBid* SentTab::current() const {
    const int row = m_bids->currentRow();
    if (row >= 0 && static_cast<std::size_t>(row) < m_sent.size())
        return &m_sent[static_cast<std::size_t>(row)];
    return m_sent.size() == 1 ? &m_sent.front() : nullptr;
}

Result<Paper> SentTab::currentPaper() const {
    const SentBid* bid = current();
    if (!bid)
        return badInput("Choose a bid in the list first.");
    return sentBidPaper(m_desk.book(), *bid);
}

bool SentTab::perform(const Result<Edit>& edit) {
    if (edit)
        return m_desk.perform(*edit);
    m_desk.refuse(edit.error());
    return false;
}

/// The settled figures and what the plan's other options would change, on another thread.
bool SentTab::reckon(JobFigures& figures, std::vector<Alternate>& alternates) {
    const Book book = m_desk.book(); // the work goes on beside the window
    const auto settled = settledFigures(m_figures, m_job);
    return runLong(this, tr("Reckoning the bid"), [&](LongWork& work) {
        const auto stop = [&work] { return work.stopped(); };
        figures = settled ? *settled
                          : figuresFor(book, m_job.plan, m_job.selection, Effort::thorough, stop);
        alternates = alternatesFor(book, m_job.plan, m_job.selection, figures, stop);
    });
}

void SentTab::send() {
    if (!m_job || !m_desk.openPlan(m_job.plan))
        return;
    const House* house = m_desk.book().house(m_job.house);
    if (house && !m_desk.openPlan(house->plan)) // names its elevation and options
        return;
    JobFigures figures;
    std::vector<Alternate> alternates;
    if (!reckon(figures, alternates))
        return;
    FieldDialog dialog(tr("Send the bid"), tr("Send it"), this);
    auto* date = dialog.addDate(tr("&Date"), m_desk.clock().today());
    dialog.addHint(tr("Price %1. What is sent is numbered and stays as it is, whatever rates and "
                      "prices do later; a revision follows it.")
                       .arg(text(formatMoney(
                           figures.estimate.total.price, m_desk.book().prices.shop().currency))));
    for (const std::string& problem : figures.estimate.problems)
        dialog.addHint(tr("On the paper as not right yet: %1").arg(text(problem)));
    const auto jobOn = [&]() -> Result<PaperJob> {
        const auto day = FieldDialog::dateIn(*date, m_desk.book());
        if (!day)
            return day.error();
        return PaperJob{m_desk.book(), m_job.plan, m_job.house, {}, *day, m_job.selection};
    };
    dialog.addStep(tr("&Look at it first\u2026"), [&]() -> Result<void> {
        const auto job = jobOn();
        if (!job)
            return job.error();
        previewPaper(
            window(), bidPaper(*job, figures, {}, alternates), m_desk.book().prices.shop().page);
        return {};
    });
    Result<Edit> edit = Edit();
    const bool said = dialog.run([&]() -> Result<void> {
        const auto job = jobOn();
        if (!job)
            return job.error();
        edit = sendBid(*job, figures, alternates, m_desk.ids());
        return edit ? Result<void>() : Result<void>(edit.error());
    });
    if (said)
        perform(edit);
}

void SentTab::printOne() {
    const auto paper = currentPaper();
    if (paper)
        previewPaper(window(), *paper, m_desk.book().prices.shop().page);
    else
        m_desk.refuse(paper.error());
}

void SentTab::answer(BidAnswer how, const QString& title, const QString& noteLabel) {
    const SentBid* chosen = current();
    if (!chosen) {
        m_desk.refuse(Error{Fault::badInput, "Choose a bid in the list first."});
        return;
    }
    const SentBid bid = *chosen; // the list is made anew while the dialog is up
    JobFigures figures;
    std::vector<Alternate> alternates;
    if (how == BidAnswer::accepted && !reckon(figures, alternates))
        return;
    FieldDialog dialog(title, tr("Note it"), this);
    auto* date = dialog.addDate(tr("On which &day"), m_desk.clock().today());
    auto* note = dialog.addText(noteLabel, text(bid.note));
    Result<Edit> edit = Edit();
    const bool said = dialog.run([&]() -> Result<void> {
        const auto day = FieldDialog::dateIn(*date, m_desk.book());
        if (!day)
            return day.error();
        SentBid answered = bid;
        answered.answer = how;
        answered.answered = *day;
        answered.note = utf8(note->text().trimmed());
        edit = answerBid(m_desk.book(), m_desk.ids(), answered, figures.estimate);
        return edit ? Result<void>() : Result<void>(edit.error());
    });
    if (said)
        perform(edit);
}

void SentTab::accept() {
    answer(BidAnswer::accepted, tr("The bid is accepted"), tr("&Note, such as who signed"));
}

void SentTab::lose() {
    answer(BidAnswer::lost, tr("The bid is lost"), tr("&Note, such as to whom and at what price"));
}

void SentTab::reopen() {
    const SentBid* bid = current();
    if (!bid)
        return;
    SentBid open = *bid;
    open.answer = BidAnswer::open;
    perform(answerBid(m_desk.book(), m_desk.ids(), open, m_figures.figures().estimate));
}

void SentTab::copySettings() {
    if (m_job)
        copySettingsDialog(m_desk, m_job.plan, this);
}

} // namespace miterbook
