// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/paper_actions.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "desk/text.h"
#include "figures/job_paper.h"
#include "papers/paper_list.h"
#include "printing/export_paper.h"
#include "printing/preview.h"

#include <QAction>
#include <QWidget>

namespace miterbook {

PaperActions::PaperActions(std::string_view paper, Desk& desk, FigureDesk& figures, QWidget* page)
    : QObject(page)
    , m_paper(paper)
    , m_desk(desk)
    , m_figures(figures)
    , m_page(page) {
    const QString title = text(findPaper(paper)->title);
    m_preview = new QAction(tr("Print preview: %1…").arg(title), this);
    m_preview->setShortcut(QKeySequence::Print);
    m_preview->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    m_save = new QAction(tr("Save %1 to a file…").arg(title.toLower()), this);
    connect(m_preview, &QAction::triggered, this, [this] { preview(); });
    connect(m_save, &QAction::triggered, this, [this] { save(); });
    page->addActions(actions());
}

QList<QAction*> PaperActions::actions() const {
    return {m_preview, m_save};
}

Result<Paper> PaperActions::paper() const {
    return jobPaper(m_desk, m_figures, m_paper, m_figures.job(), m_day ? m_day() : noDate, m_page);
}

void PaperActions::preview() {
    const auto made = paper();
    if (made)
        previewPaper(m_page->window(), *made, m_desk.book().prices.shop().page);
    else if (made.error().fault != Fault::cancelled)
        m_desk.refuse(made.error());
}

void PaperActions::save() {
    const auto made = paper();
    if (made)
        savePaperAs(m_page->window(), *made, m_desk.book().prices.shop().page);
    else if (made.error().fault != Fault::cancelled)
        m_desk.refuse(made.error());
}

} // namespace miterbook
