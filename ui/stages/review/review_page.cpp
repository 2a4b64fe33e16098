// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/review/review_page.h"

#include "stages/review/compare_tab.h"
#include "stages/review/house_tab.h"
#include "stages/review/losses_tab.h"
#include "stages/review/rates_tab.h"
#include "stages/review/review_desk.h"

#include <QTabWidget>
#include <QVBoxLayout>

namespace miterbook {

ReviewPage::ReviewPage(Desk& desk, FigureDesk& figures, QWidget* parent)
    : QWidget(parent)
    , m_review(new ReviewDesk(desk, figures, this))
    , m_house(new HouseTab(*m_review))
    , m_compare(new CompareTab(*m_review))
    , m_losses(new LossesTab(*m_review))
    , m_rates(new RatesTab(*m_review))
    , m_tabs(new QTabWidget) {
    setAccessibleName(tr("Review"));
    m_tabs->addTab(m_house, tr("This house"));
    m_tabs->addTab(m_compare, tr("Houses compared"));
    m_tabs->addTab(m_losses, tr("What loses money"));
    m_tabs->addTab(m_rates, tr("Labour rates"));
    auto* layout = new QVBoxLayout(this);
    layout->addWidget(m_tabs);
}

QString ReviewPage::nextStep() const {
    const House* house = m_review->house();
    if (house && !isFinished(*house))
        return tr("set the house to finished on the Houses screen when its work is done");
    return {};
}

} // namespace miterbook
