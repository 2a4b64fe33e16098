// SPDX-License-Identifier: GPL-3.0-or-later
#include "stages/plan/variants_panel.h"

#include "plan/plan_checks.h"
#include "stages/plan/variant_prices.h"
#include "widgets/data_table.h"
#include "widgets/profile_column.h"
#include "widgets/table_model.h"
#include "widgets/table_panel.h"

#include <QSplitter>
#include <QVBoxLayout>

namespace miterbook {

namespace {

constexpr Column<Variant> variantList[] = {
    textColumn<&Variant::name>(QT_TRANSLATE_NOOP("Column", "Name")),
    wordColumn<&Variant::kind>(QT_TRANSLATE_NOOP("Column", "Kind")),
    checkColumn<&Variant::reversed>(QT_TRANSLATE_NOOP("Column", "Left for right")),
    textColumn<&Variant::note>(QT_TRANSLATE_NOOP("Column", "Note")),
};

constexpr Column<Swap> swapList[] = {
    profileColumn<&Swap::from, NoProfile::unsaid>(QT_TRANSLATE_NOOP("Column", "Instead of")),
    profileColumn<&Swap::to, NoProfile::unsaid>(QT_TRANSLATE_NOOP("Column", "Use")),
};

} // namespace

VariantsPanel::VariantsPanel(Desk& desk, QWidget* parent)
    : QWidget(parent)
    , m_desk(desk)
    , m_prices(new VariantPrices(desk)) {
    makeVariants();
    makeSwaps();
    auto* both = new QSplitter;
    both->addWidget(m_left);
    both->addWidget(m_right);
    both->setStretchFactor(0, 3);
    both->setStretchFactor(1, 2);
    auto* layout = new QVBoxLayout(this);
    layout->setContentsMargins(0, 0, 0, 0);
    layout->addWidget(both, 1);
    layout->addWidget(m_prices);
    connect(&m_left->table(), &DataTable::currentRowChanged, this, &VariantsPanel::showCurrent);
    connect(m_variants, &QAbstractItemModel::dataChanged, this, &VariantsPanel::showCurrent);
    showCurrent();
}

void VariantsPanel::makeVariants() {
    TableSpec<Variant> spec;
    spec.name = tr("Elevations and options");
    spec.columns = variantList;
    spec.rows = [this] {
        std::vector<Variant> rows;
        for (const auto& [id, row] : m_desk.book().sheet(m_plan).of<Variant>())
            rows.push_back(row);
        return rows;
    };
    spec.blank = [this](int) {
        Variant variant;
        variant.plan = m_plan;
        return variant;
    };
    spec.check = [](const Variant& variant) { return checkVariant(variant); };
    spec.title = [](const Variant& variant) {
        return std::string(word(variant.kind)) + " " + variant.name;
    };
    spec.copied = [](Variant& variant, int) { variant.name += " copy"; };
    spec.emptyHint = tr("Name an elevation or option here. Then choose above where changes go, and "
                        "type what differs into the tables.");
    m_variants = new TableModel<Variant>(m_desk, std::move(spec), this);
    m_left = new TablePanel(*m_variants);
}

void VariantsPanel::makeSwaps() {
    TableSpec<Swap> spec;
    spec.name = tr("Profile swaps");
    spec.columns = swapList;
    spec.rows = [this] {
        std::vector<Swap> rows;
        for (const auto& [id, row] : m_desk.book().sheet(m_plan).of<Swap>()) {
            if (row.variant == m_current)
                rows.push_back(row);
        }
        return rows;
    };
    spec.blank = [this](int) {
        Swap swap;
        swap.plan = m_plan;
        swap.variant = m_current;
        const Plan* plan = m_desk.book().plan(m_plan);
        if (plan) { // both must be said: until they are, the casing is swapped for itself
            swap.from = plan->windowCasing;
            swap.to = plan->windowCasing;
        }
        return swap;
    };
    spec.title = [](const Swap&) { return std::string("profile swap"); };
    spec.emptyHint = tr("A profile that this elevation or option uses instead of another, wherever "
                        "the plan has it.");
    m_swaps = new TableModel<Swap>(m_desk, std::move(spec), this);
    m_right = new TablePanel(*m_swaps);
}

void VariantsPanel::showPlan(Id<Plan> plan) {
    m_plan = plan;
    m_variants->refresh();
    m_prices->showPlan(plan);
    showCurrent();
}

void VariantsPanel::showCurrent() {
    const Variant* variant = m_variants->rowAt(m_left->table().currentRow());
    m_current = variant ? variant->id : Id<Variant>();
    m_right->setEnabled(variant != nullptr);
    m_swaps->refresh();
}

} // namespace miterbook
