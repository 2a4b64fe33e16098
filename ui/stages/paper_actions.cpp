// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/paper_actions.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "papers/paper_list.h"
#include "printing/export_paper.h"
#include "printing/preview.h"

#include <QAction>
#include <QApplication>

namespace miterbook {

PaperActions::PaperActions(
    std::string_view paper, Desk& desk, FigureDesk& figures, QObject* parent)
    : QObject(parent)
    , m_paper(paper)
    , m_desk(desk)
    , m_figures(figures) {
    const QString title = text(findPaper(paper)->title);
    m_preview = new QAction(tr("Print preview: %1…").arg(title), this);
    m_preview->setShortcut(QKeySequence::Print);
    m_save = new QAction(tr("Save %1 to a file…").arg(title.toLower()), this);
    connect(m_preview, &QAction::triggered, this, [this] { preview(); });
    connect(m_save, &QAction::triggered, this, [this] { save(); });
}

QList<QAction*> PaperActions::actions() const {
    return {m_preview, m_save};
}

Paper PaperActions::make() const {
    const JobRef& job = m_figures.job();
    const House* house = m_desk.book().house(job.house);
    if (house)
        m_desk.openPlan(house->plan); // names the elevation and options it was started with
    return findPaper(m_paper)->build(
        {m_desk.book(), job.plan, job.house, {}, m_desk.clock().today(), job.selection},
        m_figures.figures());
}

void PaperActions::preview() {
    previewPaper(QApplication::activeWindow(), make(), m_desk.book().prices.shop().page);
}

void PaperActions::save() {
    savePaperAs(QApplication::activeWindow(), make(), m_desk.book().prices.shop().page);
}

} // namespace miterbook
