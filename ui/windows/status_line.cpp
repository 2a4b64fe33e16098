// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/status_line.h"

#include "basics/number_text.h"
#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "widgets/plain_text.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPushButton>

using namespace Qt::Literals::StringLiterals;

namespace miterbook {

StatusLine::StatusLine(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_text(plainLabel({}))
    , m_search(hintLabel(tr("looking for a cheaper stick plan\u2026")))
    , m_stop(new QPushButton(tr("Stop looking"))) {
    m_text->setWordWrap(false);
    m_search->setWordWrap(false);
    m_stop->setFocusPolicy(Qt::TabFocus);
    m_stop->setAccessibleName(tr("Stop looking for a cheaper stick plan"));
    connect(m_stop, &QPushButton::clicked, this, [this] {
        m_figures.stopSearch();
        show();
    });
    connect(&figures, &FigureDesk::figured, this, &StatusLine::show);

    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_text);
    layout->addStretch(1);
    layout->addWidget(m_search);
    layout->addWidget(m_stop);
    show();
}

QString StatusLine::text() const {
    return m_text->text();
}

void StatusLine::show() {
    const bool searching = !m_figures.settled();
    m_search->setVisible(searching);
    m_stop->setVisible(searching);
    if (!m_figures.job()) {
        m_text->setText({});
        return;
    }
    const Estimate& estimate = m_figures.figures().estimate;
    const std::string& sign = m_desk.book().prices.shop().currency;
    const auto money = [&](Money amount) { return miterbook::text(formatMoney(amount, sign)); };
    const QString parts[] = {
        tr("Price %1").arg(money(estimate.total.price)),
        tr("Cost %1").arg(money(estimate.total.cost())),
        tr("Hours %1").arg(miterbook::text(formatHours(estimate.total.hours))),
        tr("Margin %1 %").arg(miterbook::text(formatPercent(estimate.margin))),
        tr("%1 per man-hour").arg(money(estimate.perManHour)),
    };
    QStringList words;
    for (const QString& part : parts)
        words.append(part);
    const auto problems = estimate.problems.size();
    if (problems > 0)
        words.append(counted(
            qsizetype(problems), tr("1 problem in the price"), tr("%1 problems in the price")));
    m_text->setText(words.join(u"     "_s));
    m_text->setAccessibleName(words.join(u", "_s));
}

} // namespace miterbook
