// SPDX-License-Identifier: GPL-3.0-or-later
#include "windows/plans_page.h"

#include "desk/desk.h"
#include "desk/text.h"
#include "job/start_house.h"
#include "widgets/columns.h"
#include "widgets/data_table.h"
#include "widgets/empty_page.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"
#include "windows/ask.h"
#include "windows/book_actions.h"
#include "windows/new_plan_dialog.h"

#include <QAction>
#include <QPushButton>
#include <QStackedWidget>
#include <QVBoxLayout>

namespace miterbook {

namespace {

QString builderText(const Plan& plan, const Book& book) {
    const Builder* builder = book.builderOf(plan);
    return builder ? text(builder->name) : QString();
}

QString setText(const Plan& plan, const Book& book) {
    const PlanSet* set = book.jobs.of<PlanSet>().find(plan.set);
    return set ? text(set->name) : QString();
}

QString housesText(const Plan& plan, const Book& book) {
    int count = 0;
    for (const auto& [id, house] : book.jobs.of<House>())
        count += house.plan == plan.id ? 1 : 0;
    return count == 0 ? QString() : QString::number(count);
}

constexpr Column<Plan> planColumns[] = {
    Column<Plan>{.title = QT_TRANSLATE_NOOP("Column", "Builder"), .read = builderText},
    Column<Plan>{.title = QT_TRANSLATE_NOOP("Column", "Plan set"), .read = setText},
    textColumn<&Plan::name>(QT_TRANSLATE_NOOP("Column", "Plan")),
    floorColumn<&Plan::floorArea>(QT_TRANSLATE_NOOP("Column", "Floor area")),
    Column<Plan>{.title = QT_TRANSLATE_NOOP("Column", "Houses"),
        .kind = CellKind::number,
        .read = housesText},
    textColumn<&Plan::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

} // namespace

PlansPage::PlansPage(Desk& desk, BookActions& files, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_files(files)
    , m_model(new TableModel<Plan>(desk, spec(), this))
    , m_panel(new TablePanel(*m_model))
    , m_either(new QStackedWidget) {
    setAccessibleName(tr("Plans"));
    action(
        tr("&New plan\u2026"), QKeySequence(Qt::CTRL | Qt::SHIFT | Qt::Key_N), &PlansPage::newPlan);
    action(tr("&Open the plan"), {}, &PlansPage::openCurrent);
    action(tr("&Start a house from it\u2026"), {}, &PlansPage::startHouse);
    action(tr("&Write it to a plan file\u2026"), {}, &PlansPage::writeCurrent);
    action(tr("&Remove the plan\u2026"), {}, &PlansPage::removeCurrent);
    m_actions.insert(1, files.bringPlan());
    for (QAction* each : {m_actions.at(0), m_actions.at(1)}) {
        auto* button = new QPushButton(each->text());
        connect(button, &QPushButton::clicked, each, &QAction::trigger);
        m_panel->addBeside(button);
    }
    m_panel->table().setOpensRows(true);
    m_either->addWidget(m_panel);
    m_either->addWidget(new EmptyPage(tr("No plans yet"),
        tr("A plan is one house design of a builder, with its levels, rooms and openings. Begin "
           "one, or bring in a plan file with Ctrl+B."),
        m_actions.first()));
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(m_either);
    setFocusProxy(&m_panel->table());
    connect(&m_panel->table(), &QAbstractItemView::activated, this, &PlansPage::openCurrent);
    connect(&desk, &Desk::changed, this, &PlansPage::showOne);
    showOne();
}

PlansPage::~PlansPage() = default;

TableSpec<Plan> PlansPage::spec() {
    TableSpec<Plan> spec;
    spec.name = tr("Plans");
    spec.columns = planColumns;
    spec.rows = [this] {
        std::vector<Plan> plans;
        for (const auto& [id, plan] : m_desk.book().jobs.of<Plan>()) {
            if (!plan.house)
                plans.push_back(plan);
        }
        std::ranges::stable_sort(plans, {}, [this](const Plan& plan) {
            return std::pair(builderText(plan, m_desk.book()), setText(plan, m_desk.book()));
        });
        return plans;
    };
    spec.fixedRows = true; // the page removes them with everything below them
    spec.check = [](const Plan& plan) -> Result<void> {
        return plan.name.empty() ? badInput("A plan needs a name.") : Result<void>();
    };
    return spec;
}

QAction* PlansPage::action(
    const QString& words, const QKeySequence& keys, void (PlansPage::*slot)()) {
    auto* action = new QAction(words, this);
    action->setShortcut(keys);
    action->setShortcutContext(Qt::WidgetWithChildrenShortcut);
    connect(action, &QAction::triggered, this, slot);
    addAction(action);
    m_actions.append(action);
    return action;
}

Id<Plan> PlansPage::current() const {
    const Plan* plan = m_model->rowAt(m_panel->table().currentRow());
    return plan ? plan->id : Id<Plan>();
}

void PlansPage::newPlan() {
    NewPlanDialog dialog(m_desk, this);
    if (dialog.exec() != QDialog::Accepted || !m_desk.perform(dialog.edit()))
        return;
    for (const Change& change : dialog.edit().changes) {
        if (const Plan* plan = change.row().as<Plan>())
            Q_EMIT opened({plan->id, {}, {}});
    }
}

void PlansPage::openCurrent() {
    if (const Id<Plan> plan = current())
        Q_EMIT opened({plan, {}, {}});
}

void PlansPage::startHouse() {
    if (const Id<Plan> plan = current())
        Q_EMIT startWanted(plan);
}

void PlansPage::writeCurrent() {
    if (const Id<Plan> plan = current())
        m_files.writePlan(plan);
}

void PlansPage::removeCurrent() {
    const Id<Plan> id = current();
    const Plan* plan = m_desk.book().plan(id);
    if (!plan || !m_desk.openPlan(id))
        return;
    if (ask(this, tr("Remove the plan \"%1\" with everything on it?").arg(text(plan->name)),
            tr("Undo brings it back."), tr("Remove")))
        m_desk.perform(removePlan(m_desk.book(), id));
}

void PlansPage::showOne() {
    m_either->setCurrentIndex(m_model->realRows() == 0 ? 1 : 0);
}

} // namespace miterbook
