// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/houses_page.h"

#include "desk/text.h"
#include "job/figures.h"
#include "job/house_stage.h"
#include "job/start_house.h"
#include "widgets/data_table.h"
#include "widgets/empty_page.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"
#include "widgets/table_proxy.h"
#include "windows/ask.h"
#include "windows/start_house_dialog.h"

#include <QAction>
#include <QComboBox>
#include <QGuiApplication>
#include <QPushButton>
#include <QScrollBar>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace miterbook {

HousesPage::HousesPage(Desk& desk, MoneyDesk& money, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_money(money)
    , m_figures(desk)
    , m_model(new TableModel<HouseLine>(desk, spec(), this))
    , m_panel(new TablePanel(*m_model))
    , m_stage(new QComboBox)
    , m_either(new QStackedWidget) {
    setAccessibleName(tr("Houses"));
    makeActions();
    makeStageFilter();
    auto* start = new QPushButton(m_actions.first()->text());
    connect(start, &QPushButton::clicked, m_actions.first(), &QAction::trigger);
    m_panel->addBeside(m_stage);
    auto* trouble = new QPushButton(m_actions.last()->text());
    connect(trouble, &QPushButton::clicked, m_actions.last(), &QAction::trigger);
    m_panel->addBeside(trouble);
    m_panel->addBeside(start);
    m_panel->table().setOpensRows(true);
    m_either->addWidget(m_panel);
    m_either->addWidget(new EmptyPage(tr("No houses yet"),
        tr("A house is a builder's plan on a lot, with its own measurements, hours and money. "
           "Enter or bring in a plan under Plans, then start a house from it."),
        m_actions.first()));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_either);
    setFocusProxy(&m_panel->table());

    connect(&m_panel->table(), &QAbstractItemView::activated, this, &HousesPage::openCurrent);
    connect(&m_figures, &HouseFigures::figured, &m_later, qOverload<>(&QTimer::start));
    connect(&m_later, &QTimer::timeout, m_model, &TableModelBase::refresh);
    m_later.setSingleShot(true);
    m_later.setInterval(50);
    connect(&desk, &Desk::changed, this, [this] {
        showOne();
        wantVisible();
    });
    connect(m_panel->table().verticalScrollBar(), &QScrollBar::valueChanged, this,
        &HousesPage::wantVisible);
    connect(&m_panel->table().proxy(), &QAbstractItemModel::layoutChanged, this,
        &HousesPage::wantVisible);
    showOne();
}

HousesPage::~HousesPage() = default;

TableSpec<HouseLine> HousesPage::spec() {
    TableSpec<HouseLine> spec;
    spec.name = tr("Houses");
    spec.columns = houseColumns();
    spec.rows = [this] {
        std::vector<HouseLine> lines;
        for (const auto& [id, house] : m_desk.book().jobs.of<House>())
            lines.push_back(
                {house, m_figures.find(house), m_desk.book().time.total(id), m_money.of(id)});
        return lines;
    };
    spec.fixedRows = true; // the page removes them with everything below them
    spec.key = [](const HouseLine& line) { return line.house.id.value(); };
    spec.store = [this](EditBuilder& edit, HouseLine line) { store(edit, std::move(line.house)); };
    spec.check = [](const HouseLine& line) -> Result<void> {
        return line.house.name.empty() ? badInput("A house needs a name.") : Result<void>();
    };
    spec.title = [](const HouseLine& line) { return "house " + line.house.name; };
    return spec;
}

/// With its bid kept, as the bid paper would say it, where the house has just been won.
void HousesPage::store(EditBuilder& edit, House house) {
    const Book& book = m_desk.book();
    std::optional<JobFigures> figures;
    if (m_desk.openPlan(house.work) && needsEstimate(book, house)) {
        QGuiApplication::setOverrideCursor(Qt::WaitCursor);
        figures = figuresFor(book, house.work, {}, Effort::thorough);
        QGuiApplication::restoreOverrideCursor();
    }
    putHouseStage(edit, book, m_desk.ids(), std::move(house), m_desk.clock().today(),
        figures ? &figures->estimate : nullptr);
}

QAction* HousesPage::action(
    const QString& words, const QKeySequence& keys, void (HousesPage::*slot)()) {
    auto* action = new QAction(words, this);
    action->setShortcut(keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, this, slot);
    addAction(action);
    m_actions.append(action);
    return action;
}

void HousesPage::makeActions() {
    action(tr("&Start a house\u2026"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N),
        &HousesPage::startAny);
    action(tr("&Open the house"), {}, &HousesPage::openCurrent);
    action(tr("&Remove the house\u2026"), {}, &HousesPage::removeCurrent);
    action(tr("Those in &trouble first"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_T),
        &HousesPage::troubleFirst);
}

void HousesPage::makeStageFilter() {
    m_stage->setAccessibleName(tr("Stage of the houses shown"));
    m_stage->addItem(tr("all stages"));
    m_stage->addItems(wordsOf<HouseStage>());
    connect(m_stage, &QComboBox::currentIndexChanged, this, [this](int index) {
        TableProxy& proxy = m_panel->table().proxy();
        if (index <= 0) {
            proxy.setRowFilter({});
            return;
        }
        const HouseStage stage = Words<HouseStage>::list[static_cast<std::size_t>(index - 1)].value;
        proxy.setRowFilter(
            [this, stage](int row) { return m_model->rowAt(row)->house.stage == stage; });
    });
}

const House* HousesPage::current() const {
    const HouseLine* line = m_model->rowAt(m_panel->table().currentRow());
    return line ? &line->house : nullptr;
}

void HousesPage::openCurrent() {
    if (const House* house = current())
        Q_EMIT opened({house->work, house->id, {}});
}

void HousesPage::startHouse(Id<Plan> plan) {
    StartHouseDialog dialog(m_desk, plan, this);
    if (dialog.exec() == QDialog::Accepted && m_desk.perform(dialog.edit())) {
        const House& house = std::prev(m_desk.book().jobs.of<House>().end())->second;
        Q_EMIT opened({house.work, house.id, {}});
    }
}

void HousesPage::removeCurrent() {
    const House* house = current();
    if (!house || !m_desk.openPlan(house->work))
        return;
    if (ask(this,
            tr("Remove the house \"%1\" with everything entered for it?").arg(text(house->name)),
            tr("Undo brings it back."), tr("Remove")))
        m_desk.perform(removeHouse(m_desk.book(), house->id));
}

void HousesPage::troubleFirst() {
    for (int column = 0; column < m_model->columnCount(); ++column) {
        if (m_model->title(column) == QCoreApplication::translate("Column", "Against the bid"))
            m_panel->table().sortByColumn(column, Qt::AscendingOrder);
    }
}

void HousesPage::showOne() {
    m_either->setCurrentIndex(m_desk.book().jobs.of<House>().empty() ? 1 : 0);
}

void HousesPage::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    QMetaObject::invokeMethod(this, &HousesPage::wantVisible, Qt::QueuedConnection);
}

void HousesPage::resizeEvent(QResizeEvent* event) {
    QWidget::resizeEvent(event);
    wantVisible();
}

void HousesPage::wantVisible() {
    if (!isVisible())
        return;
    const DataTable& table = m_panel->table();
    const int first = std::max(0, table.rowAt(0));
    const int below = table.rowAt(table.viewport()->height());
    const int last = below < 0 ? table.proxy().rowCount() - 1 : below;
    std::vector<Id<Plan>> works;
    for (int shown = first; shown <= last; ++shown) {
        const int row = table.proxy().mapToSource(table.proxy().index(shown, 0)).row();
        if (const HouseLine* line = m_model->rowAt(row))
            works.push_back(line->house.work);
    }
    m_figures.want(works);
}

} // namespace miterbook
