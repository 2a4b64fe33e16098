// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/takeoff/takeoff_page.h"

#include "desk/desk.h"
#include "desk/figure_desk.h"
#include "figures/figure_view.h"
#include "stages/takeoff/takeoff_rows.h"
#include "widgets/seen_refresh.h"

#include <QTabWidget>
#include <QVBoxLayout>

namespace miterbook {

TakeoffPage::TakeoffPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_figures(figures)
    , m_tabs(new QTabWidget(this)) {
    const QStringList counted{
        tr("Piece of work"), tr("What"), tr("Quantity"), tr("Unit"), tr("Pieces")};
    m_totals = addTable(tr("Whole house"), counted);
    m_places = addTable(tr("By room"), QStringList{tr("Level"), tr("Room")} + counted);
    m_pieces = addTable(tr("Pieces"),
        {tr("Level"), tr("From"), tr("Piece"), tr("Profile"), tr("Short point"), tr("Long point"),
            tr("Left end"), tr("Right end"), tr("Count")});
    m_remarks = addTable(tr("To look at"), {tr("Kind"), tr("Level"), tr("Where"), tr("What")});
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_tabs);
    auto* seen = new SeenRefresh(this, [this] { refresh(); });
    connect(&figures, &FigureDesk::figured, seen, &SeenRefresh::want);
}

FigureView* TakeoffPage::addTable(const QString& title, const QStringList& columns) {
    auto* view = new FigureView(title, columns, this);
    m_tabs->addTab(view, title);
    return view;
}

void TakeoffPage::refresh() {
    const JobFigures& figures = m_figures.figures();
    const PriceBook& prices = m_desk.book().prices;
    m_totals->setRows(totalRows(figures, prices));
    m_places->setRows(placeRows(figures, prices));
    m_pieces->setRows(pieceRows(figures, prices));
    m_remarks->setRows(
        remarkRows(figures, prices, m_desk.book().sheet(m_figures.job().plan).of<Dismissal>()));
    const int count = m_remarks->model()->rowCount();
    m_tabs->setTabText(m_tabs->indexOf(m_remarks),
        count == 0 ? tr("To look at") : tr("To look at (%1)").arg(count));
}

} // namespace miterbook
