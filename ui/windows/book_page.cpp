// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/book_page.h"

#include "widgets/plain_text.h"
#include "windows/book_forms.h"
#include "windows/book_tables.h"
#include "windows/profiles_panel.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QListWidget>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace miterbook {

BookPage::BookPage(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_list(new QListWidget)
    , m_pages(new QStackedWidget) {
    setAccessibleName(tr("The book"));
    m_list->setAccessibleName(tr("Parts of the book"));
    m_list->setSpacing(2);
    m_list->setMaximumWidth(fontMetrics().averageCharWidth() * 24);
    auto* layout = new QHBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_list);
    layout->addWidget(m_pages, 1);
    setFocusProxy(m_list);
    addForms();
    addTables();
    connect(m_list, &QListWidget::currentRowChanged, this, &BookPage::showPage);
    m_list->setCurrentRow(0);
}

void BookPage::addForms() {
    add(tr("Shop"), tr("Who you are on papers, and how the book writes lengths and money."),
        shopForm);
    add(tr("Practice"),
        tr("How your pieces are made and cut. Pieces, hours and orders follow at once."),
        practiceForm);
    add(tr("Terms"),
        tr("How bids are priced and what they say, unless a plan or house says otherwise."),
        termsForm);
}

void BookPage::addTables() {
    const QString starter = tr("Rows marked \"starter\" are common practice or plausible prices, "
                               "not yours: check each one. Typing over a row makes it yours.");
    add(tr("Profiles"),
        tr("Mouldings and boards, and the sticks the yard sells them in. ") + starter,
        profilesPanel);
    add(tr("Parts"), tr("Goods bought by the each. ") + starter, partsTable);
    add(tr("Consumables"), tr("What is used up along the trim. ") + starter, consumablesTable);
    add(tr("Labour rates"),
        tr("Minutes of one carpenter for one unit under plain conditions. ") + starter, ratesTable);
    add(tr("Factors"), tr("What makes work slower, as a percentage of the plain time. ") + starter,
        factorsTable);
    add(tr("Piece prices"),
        tr("Your own price for one unit, labour and material together, for bids by the piece."),
        piecePricesTable);
    add(tr("Crew"), tr("Who works, and their wages an hour before burden."), crewTable);
    add(tr("Burden"),
        tr("What a crew hour costs besides the wage. Of items of one name the latest that has "
           "begun counts: type next year's figures as a row of their own. ")
            + starter,
        burdenTable);
    add(tr("Builders"), tr("Your customers."), buildersTable);
    add(tr("Plan sets"), tr("Each builder's plans by community or series."), planSetsTable);
    add(tr("Offcut rack"), tr("Usable remainders. A stick plan takes them before it buys."),
        offcutsTable);
}

void BookPage::add(const QString& title, const QString& hint, Make make) {
    m_made.push_back({title, hint, std::move(make)});
    m_list->addItem(title);
}

void BookPage::showPage(int index) {
    if (index < 0)
        return;
    Page& page = m_made[static_cast<std::size_t>(index)];
    if (!page.made) {
        page.made = new QWidget;
        auto* layout = new QVBoxLayout(page.made);
        layout->setContentsMargins(0, 0, 0, 0);
        layout->addWidget(headLabel(page.title));
        layout->addWidget(hintLabel(page.hint));
        layout->addWidget(page.make(m_desk), 1);
        m_pages->addWidget(page.made);
    }
    m_pages->setCurrentWidget(page.made);
}

} // namespace miterbook
