// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/plan_form.h"

#include "widgets/profile_column.h"
#include "widgets/record_form.h"
#include "widgets/table_model.h"

namespace miterbook {

namespace {

constexpr Column<Plan> planFields[] = {
    textColumn<&Plan::name>(QT_TRANSLATE_NOOP("Column", "Name")),
    floorColumn<&Plan::floorArea>(QT_TRANSLATE_NOOP("Column", "Floor area")),
    profileColumn<&Plan::windowCasing, NoProfile::unsaid, ProfileUse::casing, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Window casing")),
    profileColumn<&Plan::doorCasing, NoProfile::unsaid, ProfileUse::casing, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Door casing")),
    profileColumn<&Plan::stool, NoProfile::unsaid, ProfileUse::stool, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Stool")),
    profileColumn<&Plan::jamb, NoProfile::unsaid, ProfileUse::jamb, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Jamb extension")),
    profileColumn<&Plan::base, NoProfile::unsaid, ProfileUse::base, ProfileUse::board>(
        QT_TRANSLATE_NOOP("Column", "Base")),
    profileColumn<&Plan::shoe, NoProfile::unsaid, ProfileUse::shoe>(
        QT_TRANSLATE_NOOP("Column", "Shoe")),
    profileColumn<&Plan::crown, NoProfile::unsaid, ProfileUse::crown>(
        QT_TRANSLATE_NOOP("Column", "Crown")),
    linesColumn<&Plan::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

} // namespace

PlanForm::PlanForm(Desk& desk, QWidget* parent)
    : QScrollArea(parent)
    , m_desk(desk) {
    TableSpec<Plan> spec;
    spec.name = tr("Plan and its profiles");
    spec.columns = planFields;
    spec.rows = [this] {
        const Plan* plan = m_desk.book().plan(m_plan);
        return plan ? std::vector<Plan>{*plan} : std::vector<Plan>();
    };
    spec.check = [](const Plan& plan) -> Result<void> {
        return plan.name.empty() ? badInput("A plan needs a name.") : Result<void>();
    };
    m_model = new TableModel<Plan>(desk, std::move(spec), this);
    setFrameShape(QFrame::NoFrame);
    setWidgetResizable(true);
    setFocusPolicy(Qt::NoFocus); // it goes to the fields
    setWidget(new RecordForm(*m_model));
}

void PlanForm::showPlan(Id<Plan> plan) {
    m_plan = plan;
    m_model->refresh();
}

} // namespace miterbook
